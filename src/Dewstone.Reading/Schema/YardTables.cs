using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Binding;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Schema;

/// <summary>Key tables of an order's shifts, crew, bins and curing.</summary>
internal static class YardTables
{
    private static readonly KeyOf<IReadOnlyList<DayOfWeek>> Days = Key.Must("days",
        new ListForm<DayOfWeek>(
            new WordForm<DayOfWeek>(
                ("mon", DayOfWeek.Monday), ("tue", DayOfWeek.Tuesday), ("wed", DayOfWeek.Wednesday), ("thu", DayOfWeek.Thursday),
                ("fri", DayOfWeek.Friday), ("sat", DayOfWeek.Saturday), ("sun", DayOfWeek.Sunday)),
            1, "days of the week", "[mon, tue, wed, thu, fri]"),
        "days on which a shift begins");

    private static readonly KeyOf<TimeOnly> From = Key.Must("from", new TimeOfDayForm(), "begin");
    private static readonly KeyOf<TimeOnly> To =
        Key.Must("to", new TimeOfDayForm(), "end; on the next day when not after the begin", "\"06:00\"");

    private static readonly FormOf<ShiftPlan> ShiftTable = new TableForm<ShiftPlan>("shifts", [Days, From, To],
        bound => new ShiftPlan(new Shifts(bound.Get(Days), bound.Get(From), bound.Get(To))));

    /// <summary>Shifts, or around the clock.</summary>
    public static readonly FormOf<ShiftPlan> Shifts = new EitherForm<ShiftPlan>(
        node => node is YamlScalar, new WordForm<ShiftPlan>(("around the clock", new ShiftPlan(null))), ShiftTable);

    private static readonly KeyOf<Duration> Hours = Key.Must("hours", Forms.Time("1 min", "24 h", "8 h"), "working time a day");
    private static readonly KeyOf<Duration> DigOut = Key.Must("dig_out", Forms.Time("0 min", "24 h", "45 min"), "time to dig out one unit");

    /// <summary>Crew.</summary>
    public static readonly TableForm<Crew> Crew = new("a crew", [Hours, DigOut], bound => new Crew(bound.Get(Hours), bound.Get(DigOut)));

    private static readonly KeyOf<int> Count = Key.Must("count", Forms.Whole(1, 10_000, "20"), "bins in all");
    private static readonly KeyOf<Duration> Change =
        Key.Must("change", Forms.Time("0 min", "1 d", "10 min"), "time to roll one out and the next in");
    private static readonly KeyOf<int> CuringPlaces =
        Key.Must("curing_places", Forms.Whole(0, 10_000, "18"), "places where full bins stand to set");
    private static readonly KeyOf<Mass> Handling =
        Key.Must("handling", Forms.Mass("1 kg", "1000 t", "3500 kg"), "greatest mass of a full bin");
    private static readonly KeyOf<Duration> SetBeforeDig =
        Key.Must("set_before_dig", Forms.Time("0 h", "60 d", "36 h"), "least time from the last layer to dig-out");

    /// <summary>Bins.</summary>
    public static readonly TableForm<BinStock> Bins = new("the bins", [Count, Change, CuringPlaces, Handling, SetBeforeDig],
        bound => new BinStock(bound.Get(Count), bound.Get(Change), bound.Get(CuringPlaces), bound.Get(Handling), bound.Get(SetBeforeDig)));

    private static readonly KeyOf<Temperature> At =
        Key.Must("temperature", Forms.Temperature("-5 degC", "60 degC", "10 degC"), "temperature while curing");

    /// <summary>Curing.</summary>
    public static readonly TableForm<Temperature> Curing = new("curing", [At], bound => bound.Get(At));

    /// <summary>When the printers are attended.</summary>
    /// <param name="Shifts">Shifts; null for around the clock.</param>
    internal sealed record ShiftPlan(Shifts? Shifts);
}
