using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Binding;

namespace Dewstone.Reading.Schema;

/// <summary>Key table of an order.</summary>
internal static class OrderTable
{
    private static readonly KeyOf<ulong> VarySeed =
        Key.Must("seed", Forms.Seed, "first seed; each unit gets its own scatter and relief", "1");
    private static readonly KeyOf<int> Redraw =
        Key.May("redraw", Forms.Whole(0, 1000, "5"), "how often a draw that fails may be replaced by the next seed", fallback: "0");

    private static readonly TableForm<Variation> VaryTable = new("a variation", [VarySeed, Redraw],
        bound => new Variation(bound.Get(VarySeed), bound.Get(Redraw)));

    private static readonly KeyOf<string> File = Key.Must("file", Forms.File, "file of the unit", "units/wrack-block.unit.yaml");
    private static readonly KeyOf<int> Quantity = Key.Must("quantity", Forms.Whole(1, 100_000, "80"), "how many");
    private static readonly KeyOf<Variation> Vary =
        Key.May("vary", VaryTable, "makes each a little different; left out, all are alike", "{seed: 1, redraw: 5}");

    private static readonly KeyOf<string> Mark = Key.Must("mark",
        new TextForm("1 to 8 capital letters or digits", "WB", 8, c => char.IsAsciiLetterUpper(c) || char.IsAsciiDigit(c),
            "^[A-Z0-9]{1,8}$"), "what its marks begin with");

    private static readonly TableForm<OrderLine> LineTable = new("a line of the order", [File, Quantity, Vary, Mark],
        bound => new OrderLine
        {
            File = bound.Get(File),
            Quantity = bound.Get(Quantity),
            VarySeed = bound.MaybeOf(Vary)?.Seed,
            Redraw = bound.MaybeOf(Vary)?.Redraw ?? 0,
            Mark = bound.Get(Mark),
        });

    private static readonly KeyOf<string> Name = Key.Must("name", Forms.Name, "name for people", "Spring order");
    private static readonly KeyOf<DateOnly> Start = Key.Must("start", new DateForm(), "first day of printing");
    private static readonly KeyOf<DateOnly> Due = Key.Must("due", new DateForm(), "day by which all must be delivered", "2027-06-30");
    private static readonly KeyOf<IReadOnlyList<OrderLine>> Units =
        Key.Must("units", new ListForm<OrderLine>(LineTable, 1, "lines"), "what is ordered");

    private static readonly KeyOf<IReadOnlyList<string>> Printers = Key.May("printers",
        new ListForm<string>(Forms.File, 1, "printer files", "[printers/yard.printer.yaml]"),
            "files of the printers; they win over what a unit names", starter: true);

    private static readonly KeyOf<string> Mix =
        Key.May("mix", Forms.File, "file of the mix; it wins over what a unit names", "mixes/estuary.mix.yaml");

    private static readonly KeyOf<YardTables.ShiftPlan> ShiftKey =
        Key.May("shifts", YardTables.Shifts, "when the printers are attended", fallback: "around the clock");
    private static readonly KeyOf<Crew> CrewKey = Key.May("crew", YardTables.Crew, "crew that digs out");
    private static readonly KeyOf<BinStock> Bins =
        Key.May("bins", YardTables.Bins, "bins that circulate; a bin rolls out of the printer to set");
    private static readonly KeyOf<Temperature> Curing = Key.May("curing", YardTables.Curing, "curing; left out, at 15 degC");
    private static readonly KeyOf<Length> Gap =
        Key.May("gap", Forms.Length("0 mm", "5 m", "100 mm"), "least distance between units in a bin", starter: true);
    private static readonly KeyOf<MixStock> Stock = Key.May("mix_stock", StockTables.Stock, "mix in stock and to come");
    private static readonly KeyOf<Transport> TransportKey = Key.May("transport", StockTables.Transport, "transport to the site");
    private static readonly KeyOf<SitePlan> Plan = Key.May("site_plan", StockTables.SitePlan, "layout at sea");

    /// <summary>An order.</summary>
    public static readonly TableForm<Order> Table = new("an order",
        [Name, Start, Due, Units, Printers, Mix, ShiftKey, CrewKey, Bins, Curing, Gap, Stock, TransportKey, Plan],
        bound => new Order
        {
            Name = bound.Get(Name),
            Start = bound.Get(Start),
            Due = bound.Get(Due),
            Units = bound.Get(Units),
            PrinterFiles = bound.MaybeOf(Printers) ?? [],
            MixFile = bound.MaybeOf(Mix),
            Shifts = bound.Get(ShiftKey).Shifts,
            Crew = bound.MaybeOf(CrewKey),
            Bins = bound.MaybeOf(Bins),
            Curing = bound.Maybe(Curing),
            Gap = bound.Maybe(Gap),
            MixStock = bound.MaybeOf(Stock),
            Transport = bound.MaybeOf(TransportKey),
            SitePlan = bound.MaybeOf(Plan),
        },
        bound =>
        {
            Rules.InOrder(bound, Start, Due);
            Rules.Unique(bound, Mark.Name, Units.Name);
        });

    /// <summary>How units of a line differ.</summary>
    /// <param name="Seed">First seed.</param>
    /// <param name="Redraw">How often a draw may be replaced.</param>
    private sealed record Variation(ulong Seed, int Redraw);
}
