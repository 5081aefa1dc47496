using Dewstone.Compute.Survey;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Survey;

/// <summary>What a run log is held against, and what the report says of the whole.</summary>
public sealed class RunLogCheckTests
{
    private static readonly HeadPlace One = new(3, 1, 2, 3);

    [Fact]
    public void Sound_log_has_no_finding_and_delivers_what_was_planned()
    {
        SmallLog job = new();
        RunLogReport report = job.Check(job.Log());
        Assert.Empty(report.Findings);
        Assert.Equal((true, 48, 48), (report.IsFinished, report.PlannedDoses, report.GivenDoses));
        Assert.All(Enumerable.Range(0, job.Lattice.Count), i => Assert.Equal((i < 12 ? 0 : 1000, i < 12 ? 0 : 100), (report.Delivered!.CentiMillilitres[i], report.Delivered.Steps[i])));
    }

    [Fact]
    public void Delivered_doses_are_those_of_the_log_with_one_step_at_least()
    {
        SmallLog job = new() { Doses = p => p.Layer > 1 && p != One ? 1000 : 0 };
        HeadPlace missing = new(4, 2, 1, 2), large = new(4, 1, 3, 4);
        RunLogReport report = job.Check(job.Log(p => p == One ? 30 : p == missing ? 0 : p == large ? 1200 : job.Planned(p)));
        (int, int) Delivered(HeadPlace p) => (report.Delivered!.CentiMillilitres[job.Index(p)], report.Delivered.Steps[job.Index(p)]);
        Assert.Equal((30, 1), Delivered(One));
        Assert.Equal((0, 0), Delivered(missing));
        Assert.Equal((1200, 100), Delivered(large));
        Assert.Equal((47, 46), (report.PlannedDoses, report.GivenDoses));
        Assert.Equal(["DW3069", "DW3071", "DW3073"], report.Findings.Select(f => f.Code));
    }

    // Needle 2,3 at station 1 of layer 3: second column and second row of the window's first of each, 0.05 m pitch, tip in the middle of its layer.
    [Fact]
    public void Finding_has_its_place_in_the_unit_its_file_and_its_line()
    {
        SmallLog job = new();
        RunLogReport report = job.Check(job.Log(p => p == One, 500));
        Point3 where = Assert.Single(report.Findings).Where!.Value;
        Assert.Equal((0.025, 0.075, 0.075), (Math.Round(where.X, 9), Math.Round(where.Y, 9), Math.Round(where.Z, 9)));
        Assert.Equal(("night.csv", 16, 1), (report.Findings[0].Location!.File, report.Findings[0].Location!.Line, report.Findings[0].Location!.Column));
        Assert.Equal(0, job.Check(job.Log().Where(r => SmallLog.Place(r) != One)).Findings.Single().Location!.Column);
    }

    // Five layers, two stations, three columns and five rows of needles.
    [Theory]
    [InlineData(5, 2, 3, 5, null)]
    [InlineData(6, 1, 2, 3, "layer 6, station 1, needle 2,3: the job has 5 layers")]
    [InlineData(3, 3, 2, 3, "layer 3, station 3, needle 2,3: the printer has no such station and needle")]
    [InlineData(3, 1, 4, 3, "layer 3, station 1, needle 4,3: the printer has no such station and needle")]
    [InlineData(3, 1, 2, 6, "layer 3, station 1, needle 2,6: the printer has no such station and needle")]
    public void Row_that_job_or_printer_cannot_have_is_all_that_is_told(int layer, int station, int column, int row, string? told)
    {
        SmallLog job = new();
        RunLogReport report = job.Check([.. job.Log(p => p == One, 500), new LoggedDose(layer, station, column, row, 0, null, RunState.Ok, null, 0)]);
        Assert.Equal(told is null, report.Delivered is not null);
        Assert.Equal([told is null ? "DW3070:16 layer 3, station 1, needle 2,3: 5.0 mL delivered, 10.0 mL planned" : $"DW8344:50 {told}"], report.Findings.Select(SmallLog.Say));
    }

    [Fact]
    public void Every_foreign_row_is_told()
    {
        SmallLog job = new();
        LoggedDose row = job.Log()[0];
        Assert.Equal(["DW8344", "DW8344"], job.Check([row with { Layer = 7 }, row, row with { Row = 9 }]).Findings.Select(f => f.Code));
    }

    // One pump step of 0.1 mL and four standard deviations of 10 mL: the needle's own, else the printer's, else 2 %.
    [Theory]
    [InlineData(0.02, null, 910)]
    [InlineData(0.01, null, 950)]
    [InlineData(0.01, 0.0, 950)]
    [InlineData(0.01, 0.05, 790)]
    [InlineData(0.0, null, 910)]
    [InlineData(0.0, 0.01, 950)]
    public void Allowance_is_of_the_needle_then_the_printer_then_two_percent(double printer, double? needle, int least)
    {
        SmallLog job = new() { Repeatability = printer, Needles = [SmallLog.Needle(2, 3, repeatability: needle)] };
        Assert.Empty(job.Told(job.Log(p => p == One, least)));
        Assert.StartsWith("DW3070", Assert.Single(job.Told(job.Log(p => p == One, least - 1))), StringComparison.Ordinal);
        Assert.Empty(job.Told(job.Log(p => p == One, 2000 - least)));
        Assert.StartsWith("DW3071", Assert.Single(job.Told(job.Log(p => p == One, 2001 - least))), StringComparison.Ordinal);
    }

    // Stopped after station 1 of layer 3: its station 2 and two layers are to be given, 30 doses; those before stay as tabled.
    [Fact]
    public void Doses_before_a_stop_are_not_asked_for()
    {
        SmallLog job = new() { Stop = new PrintStop { JobFingerprint = "wrackline", AfterLayer = 2, Station = 1, PauseMilliseconds = 60_000 } };
        RunLogReport report = job.Check(job.Log().Where(r => r.Layer > 3 || r is { Layer: 3, Station: 2 }));
        Assert.Empty(report.Findings);
        Assert.Equal((30, 30), (report.PlannedDoses, report.GivenDoses));
        Assert.Equal(48_000, report.Delivered!.TotalCentiMillilitres);
        Assert.Equal(["DW3064:0 layer 3, station 2 got no water: 6 doses, 0.06 L"], job.Told(job.Log().Where(r => r.Layer > 3)));
    }

    [Fact]
    public void Times_are_used_when_every_row_has_one()
    {
        SmallLog job = new();
        IReadOnlyList<LoggedDose> log = job.Log();
        Assert.NotNull(job.Check(log).Schedule);
        Assert.Null(job.Check(log.Select((r, i) => i == 20 ? r with { StartedSeconds = null } : r)).Schedule);
    }

    [Fact]
    public void Findings_stand_by_code()
    {
        SmallLog job = new();
        IEnumerable<LoggedDose> log = job.Log(p => p == One, 0).Select(r => r is { Layer: 5, Station: 1, Column: 3, Row: 3 } ? r with { State = RunState.Fault } : r)
            .Select(r => r with { StartedSeconds = r.StartedSeconds + (r.Layer >= 4 ? 200.0 : 0.0) });
        Assert.Equal(["DW3069", "DW3077", "DW3080"], job.Check(log).Findings.Select(f => f.Code));
    }
}
