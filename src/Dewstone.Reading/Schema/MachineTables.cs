using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Binding;
using Dewstone.Reading.Quantities;

namespace Dewstone.Reading.Schema;

/// <summary>Key tables of a printer's supply, times, flushing, loose mix and crane.</summary>
internal static class MachineTables
{
    private static readonly KeyOf<FlowRate> SupplyFlow =
        Key.Must("flow", Forms.Flow("1 mL/s", "1000 L/s", "2.5 L/s"), "greatest total flow");
    private static readonly KeyOf<Volume> Tank = Key.Must("tank", Forms.Volume("0.1 L", "1000 m3", "400 L"), "tank volume");

    /// <summary>Water supply.</summary>
    public static readonly TableForm<Supply> Supply =
        new("a supply", [SupplyFlow, Tank], bound => new Supply(bound.Get(SupplyFlow), bound.Get(Tank)));

    private static readonly KeyOf<Duration> Setup =
        Key.May("setup", Span("20 min"), "preparing a job, once", fallback: "0 s", starter: true);
    private static readonly KeyOf<Duration> Spreading = Key.Must("spreading", Span("50 s"), "spreading one layer");
    private static readonly KeyOf<Duration> Move = Key.Must("move", Span("6 s"), "moving the head to a station");
    private static readonly KeyOf<Duration> Plunge = Key.Must("plunge", Span("4 s"), "plunging the needles");
    private static readonly KeyOf<Duration> Hold = Key.Must("hold", Span("1 s"), "waiting after the dose");
    private static readonly KeyOf<Duration> Withdraw = Key.Must("withdraw", Span("4 s"), "withdrawing the needles");

    /// <summary>Times of the machine's actions.</summary>
    public static readonly TableForm<MachineTiming> Timing = new("a timing", [Setup, Spreading, Move, Plunge, Hold, Withdraw],
        bound => new MachineTiming
        {
            Setup = bound.Get(Setup),
            Spreading = bound.Get(Spreading),
            Move = bound.Get(Move),
            Plunge = bound.Get(Plunge),
            Hold = bound.Get(Hold),
            Withdraw = bound.Get(Withdraw),
        });

    private static readonly KeyOf<Duration> FlushTime = Key.Must("time", Span("2 s"), "time the needles run, at their flow");

    private static readonly KeyOf<int> Every =
        Key.Must("every", Forms.Counted(QuantityKinds.Layers, "1 layer", "10000 layers", "6 layers"), "after how many layers");

    /// <summary>Flushing.</summary>
    public static readonly TableForm<Flush> Flush =
        new("a flush", [FlushTime, Every], bound => new Flush(bound.Get(FlushTime), bound.Get(Every)));

    private static readonly KeyOf<Mass> LostInBin =
        Key.Must("lost_in_bin", Forms.Mass("0 kg", "10 t", "15 kg"), "mass that stays in the bin or is lost each time");
    private static readonly KeyOf<double> Reusable =
        Key.Must("reusable", Forms.ShareOf("0 %", "100 %", "92 %"), "share of the rest that can be spread again");

    /// <summary>Loose mix.</summary>
    public static readonly TableForm<LooseMixHandling> LooseMix = new("the loose mix", [LostInBin, Reusable],
        bound => new LooseMixHandling(bound.Get(LostInBin), bound.Get(Reusable)));

    private static readonly KeyOf<Mass> MaxMass =
        Key.Must("max_mass", Forms.Mass("1 kg", "1000 t", "2500 kg"), "greatest mass on the hook");

    /// <summary>Crane.</summary>
    public static readonly TableForm<Mass> Lift = new("a lift", [MaxMass], bound => bound.Get(MaxMass));

    private static QuantityForm<Duration> Span(string example) => Forms.Time("0 s", "1 d", example);
}
