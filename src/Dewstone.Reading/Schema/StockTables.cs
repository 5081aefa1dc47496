using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Binding;
using Dewstone.Reading.Quantities;

namespace Dewstone.Reading.Schema;

/// <summary>Key tables of an order's mix stock, transport and layout at sea.</summary>
internal static class StockTables
{
    private static readonly QuantityForm<Mass> StockMass = Forms.Mass("0 kg", "100000 t", "25 t");
    private static readonly KeyOf<DateOnly> On = Key.Must("on", new DateForm(), "day", "2027-03-08");
    private static readonly KeyOf<Mass> DeliveredMass = Key.Must("mass", StockMass, "mass");

    private static readonly TableForm<Delivery> DeliveryTable = new("a delivery", [On, DeliveredMass],
        bound => new Delivery(bound.Get(On), bound.Get(DeliveredMass)));

    private static readonly KeyOf<Mass> OnHand = Key.Must("on_hand", StockMass, "on hand at the start", "30 t");
    private static readonly KeyOf<Mass> Silo = Key.Must("silo", StockMass, "capacity of the silo", "40 t");

    private static readonly KeyOf<IReadOnlyList<Delivery>> Deliveries =
        Key.May("deliveries", new ListForm<Delivery>(DeliveryTable, 0, "deliveries"), "deliveries to come");

    /// <summary>Mix in stock and to come.</summary>
    public static readonly TableForm<MixStock> Stock = new("the mix stock", [OnHand, Silo, Deliveries],
        bound => new MixStock(bound.Get(OnHand), bound.Get(Silo), [.. (bound.MaybeOf(Deliveries) ?? []).OrderBy(delivery => delivery.On)]),
        bound => Rules.InOrder(bound, OnHand, Silo));

    private static readonly KeyOf<Mass> Payload = Key.Must("payload", Forms.Mass("1 kg", "100000 t", "20 t"), "greatest mass of a trip");

    private static readonly KeyOf<int> Deck =
        Key.Must("deck", Forms.Counted(QuantityKinds.Places, "1 place", "10000 places", "40 places"), "places on deck");

    private static readonly KeyOf<int> Stack =
        Key.May("stack", Forms.Whole(1, 20, "1"), "how many units may stand on each other", fallback: "1");

    /// <summary>Transport.</summary>
    public static readonly TableForm<Transport> Transport = new("transport", [Payload, Deck, Stack],
        bound => new Transport(bound.Get(Payload), bound.Get(Deck), bound.Get(Stack)));

    private static readonly KeyOf<double[]> Anchor = Key.Must("anchor",
        new RowForm<double[]>("a position [latitude, longitude]", "[41.5 N, 30.2 W]", v => [(double)v[0], (double)v[1]],
            Forms.Plain(QuantityKinds.Latitude, "90 S", "90 N", "41.5 N"),
                Forms.Plain(QuantityKinds.Longitude, "180 W", "180 E", "30.2 W")),
        "anchor point");

    private static readonly KeyOf<Angle> Heading =
        Key.May("heading", Forms.Bearing, "bearing of the rows, clockwise from true north", "40 deg", "0 deg");
    private static readonly KeyOf<Length> Spacing =
        Key.Must("spacing", Forms.Length("0 m", "1000 m", "3 m"), "clear distance between units");
    private static readonly KeyOf<int> Rows = Key.Must("rows", Forms.Whole(1, 10_000, "4"), "number of rows");

    /// <summary>Layout at sea.</summary>
    public static readonly TableForm<SitePlan> SitePlan = new("a site plan", [Anchor, Heading, Spacing, Rows],
        bound => new SitePlan
        {
            AnchorLatitudeDegrees = bound.Get(Anchor)[0],
            AnchorLongitudeDegrees = bound.Get(Anchor)[1],
            Heading = bound.Get(Heading),
            Spacing = bound.Get(Spacing),
            Rows = bound.Get(Rows),
        });
}
