using Dewstone.Compute.Survey;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Survey;

/// <summary>
/// An invented job of four watered layers, 2 to 5, over a loose one, and its run log. The head has three columns and two rows more than the window; its stations stand
/// side by side, and the window leaves out the outermost column and row on every side of the bin. With two stations of three rows: needles 2 and 3 at station 1, 1 and 2 at
/// station 2, twelve doses a layer. Repeatability 2 %, pump step 0.1 mL: of a dose of 10 mL, 0.9 mL either way is allowed.
/// </summary>
internal sealed class SmallLog
{
    private const int Layers = 5;
    private const int Across = 3;

    /// <summary>What the machine's clock shows at the plan's zero, s.</summary>
    public const double Clock = 10_000.0;

    public int Stations { get; init; } = 2;

    public int NeedleRows { get; init; } = 3;

    /// <summary>Planned doses within the window, hundredths of a millilitre.</summary>
    public Func<HeadPlace, int> Doses { get; init; } = p => p.Layer > 1 ? 1000 : 0;

    /// <summary>Planned start of a station, s: a layer every 100 s, a station every 20 s.</summary>
    public Func<HeadPlace, double> Starts { get; init; } = p => 100.0 * (p.Layer - 1) + 10.0 + 20.0 * (p.Station - 1);

    public IReadOnlyList<NeedleState> Needles { get; init; } = [];

    public double Repeatability { get; init; } = 0.02;

    public double Drift { get; init; } = 0.05;

    public double WindowSeconds { get; init; } = 600.0;

    public bool ShiftedLayers { get; init; }

    /// <summary>Whether the window is the whole bin after all.</summary>
    public bool IsWhole { get; init; }

    public PrintStop? Stop { get; init; }

    public Lattice Lattice => new()
    {
        Columns = Across * Stations - 2 * Outside,
        Rows = NeedleRows + 2 - 2 * Outside,
        Layers = Layers,
        FirstColumn = Outside,
        FirstRow = Outside,
        PitchMetres = 0.05,
        LayerMetres = 0.05,
        OriginXMetres = 0.025,
        OriginYMetres = 0.025,
        TipDepthMetres = 0.025,
        BinXMetres = Across * Stations * 0.05,
        BinYMetres = (NeedleRows + 2) * 0.05,
        UnderLayers = 1,
        ShiftedLayers = ShiftedLayers,
    };

    private int Outside => IsWhole ? 0 : 1;

    /// <summary>Planned dose of a place; 0 beyond the window.</summary>
    public int Planned(HeadPlace place) => Index(place) < 0 ? 0 : Doses(place);

    /// <summary>Flat index in the lattice; -1 beyond the window.</summary>
    public int Index(HeadPlace place)
    {
        int i = Across * (place.Station - 1) + place.Column - 1 - Outside, j = place.Row - 1 - Outside;
        return i < 0 || j < 0 || i >= Lattice.Columns || j >= Lattice.Rows ? -1 : Lattice.Index(i, j, place.Layer - 1);
    }

    /// <summary>A log in the order of the machine: a row for every place that is planned or given, all times and volumes as planned where nothing else is said.</summary>
    public IReadOnlyList<LoggedDose> Log(Func<HeadPlace, int>? given = null) =>
    [
        .. Places().Where(p => Planned(p) > 0 || given?.Invoke(p) > 0).Select(p => (Place: p, Given: given is null ? Planned(p) : given(p)))
            .Select(g => new LoggedDose(g.Place.Layer, g.Place.Station, g.Place.Column, g.Place.Row, g.Given, g.Given / 400.0, RunState.Ok, Clock + Starts(g.Place), 0)),
    ];

    /// <summary>The log with other volumes at the places of a rule.</summary>
    public IReadOnlyList<LoggedDose> Log(Func<HeadPlace, bool> where, int given) => Log(p => where(p) ? given : Planned(p));

    /// <summary>Checks a log; its lines are counted from 2, as under a header.</summary>
    public RunLogReport Check(IEnumerable<LoggedDose> rows)
    {
        HeadPlace[] places = [.. Places()];
        Lattice lattice = Lattice;
        DosePlan planned = new() { Lattice = lattice, Steps = new int[lattice.Count], CentiMillilitres = new int[lattice.Count] };
        DoseSchedule schedule = new()
        {
            LayerSpreadSeconds = [.. Enumerable.Range(0, Layers).Select(k => 100.0 * k)],
            DoseStartSeconds = new double[lattice.Count],
            PumpSeconds = new double[lattice.Count],
        };
        foreach (HeadPlace place in places.Where(p => Index(p) >= 0))
        {
            int index = Index(place), dose = Doses(place);
            (planned.CentiMillilitres[index], planned.Steps[index]) = (dose, dose / 10);
            (schedule.DoseStartSeconds[index], schedule.PumpSeconds[index]) = (Starts(place), dose / 400.0);
        }

        Printer printer = Samples.SmallPrinter(Across * Stations, NeedleRows + 2, Layers);
        return RunLogCheck.Check(new RunLogQuestion
        {
            Job = Samples.Job(
                printer: printer with
                {
                    Head = printer.Head with { Columns = Across },
                    Needle = printer.Needle with { Repeatability = Repeatability, Drift = Drift },
                },
                needles: new NeedleTable { Needles = Needles }) with
            { Stop = Stop },
            Placement = new UnitPlacement { QuarterTurns = 0, Corner = new Point3(0.05, 0.05, 0.05), UnitBox = new Size3(0.2, 0.15, 0.2) },
            Planned = planned,
            Schedule = schedule,
            WindowSeconds = WindowSeconds,
            Rows = [.. rows.Select((row, i) => row with { Line = i + 2 })],
            File = "night.csv",
        });
    }

    /// <summary>Code, line and message of all findings on a log.</summary>
    public IReadOnlyList<string> Told(IEnumerable<LoggedDose> rows) => [.. Check(rows).Findings.Select(Say)];

    /// <summary>A needle of the table, sound but for what is given.</summary>
    public static NeedleState Needle(int column, int row, string board = "", double? repeatability = null, double? flow = null) => new()
    {
        Column = column,
        Row = row,
        Board = board,
        Repeatability = repeatability,
        Flow = flow is { } own ? FlowRate.FromMillilitresPerSecond(own) : null,
    };

    /// <summary>Where a row stands in the head and the bin.</summary>
    public static HeadPlace Place(LoggedDose row) => new(row.Layer, row.Station, row.Column, row.Row);

    public static string Say(Diagnostic finding) => $"{finding.Code}:{finding.Location!.Line} {finding.Message}";

    private IEnumerable<HeadPlace> Places() =>
        from layer in Enumerable.Range(1, Layers)
        from station in Enumerable.Range(1, Stations)
        from row in Enumerable.Range(1, NeedleRows + 2)
        from column in Enumerable.Range(1, Across)
        select new HeadPlace(layer, station, column, row);
}
