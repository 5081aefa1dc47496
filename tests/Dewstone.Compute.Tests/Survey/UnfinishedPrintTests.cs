using Dewstone.Compute.Survey;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Survey;

/// <summary>Logs that end before the job does: four layers of two stations of six doses, 48 in all.</summary>
public sealed class UnfinishedPrintTests
{
    private static readonly SmallLog Job = new();

    [Theory]
    [InlineData(24, "DW3060:25 the print stopped after layer 3: 6 of the 6 doses there were given, and 24 of 48 doses are left")]
    [InlineData(30, "DW3060:31 the print stopped in layer 4 at station 1: 6 of the 6 doses there were given, and 18 of 48 doses are left")]
    [InlineData(34, "DW3060:35 the print stopped in layer 4 at station 2: 4 of the 6 doses there were given, and 14 of 48 doses are left")]
    [InlineData(31, "DW3060:32 the print stopped in layer 4 at station 2: 1 of the 6 doses there were given, and 17 of 48 doses are left")]
    [InlineData(45, "DW3060:46 the print stopped in layer 5 at station 2: 3 of the 6 doses there were given, and 3 of 48 doses are left")]
    public void Log_that_ends_early_is_told_with_its_end_and_what_is_left(int rows, string told)
    {
        Assert.Equal([told], Job.Told(Job.Log().Take(rows)));
        Assert.Equal((false, 48, rows), Figures(Job, Job.Log().Take(rows)));
        Assert.Equal([told], Job.Told(Job.Log().Select((r, i) => i < rows ? r : r with { CentiMillilitres = 0, PumpSeconds = 0.0 })));
    }

    // At a station that is not the last of all a quarter must be gone: one of six is a dose that is missing, not an end within the station; one of four is an end.
    [Fact]
    public void Single_dose_missing_at_the_last_station_given_is_told_by_itself()
    {
        Assert.Equal(
            ["DW3060:36 the print stopped after layer 4: 5 of the 6 doses there were given, and 12 of 48 doses are left", "DW3069:0 layer 4, station 2, needle 2,4: 0.0 mL delivered, 10.0 mL planned"],
            Job.Told(Job.Log().Take(35)));
        SmallLog four = new() { Doses = p => p is { Layer: > 1, Row: < 4 } ? 1000 : 0 };
        Assert.Equal(["DW3060:24 the print stopped in layer 4 at station 2: 3 of the 4 doses there were given, and 9 of 32 doses are left"], four.Told(four.Log().Take(23)));
    }

    // At the last station of all half must be gone, and two: single needles fail too.
    [Theory]
    [InlineData(4, 48, 2, "DW3069 DW3069")]
    [InlineData(4, 48, 3, "DW3060")]
    [InlineData(2, 16, 1, "DW3069")]
    [InlineData(2, 16, 0, "")]
    public void Doses_missing_at_the_very_end_are_single_doses_up_to_a_half(int lastRow, int doses, int missing, string codes)
    {
        SmallLog job = new() { Doses = p => p.Layer > 1 && p.Row <= lastRow ? 1000 : 0 };
        RunLogReport report = job.Check(job.Log().Take(doses - missing));
        Assert.Equal(codes, string.Join(' ', report.Findings.Select(f => f.Code)));
        Assert.Equal(codes != "DW3060", report.IsFinished);
    }

    [Fact]
    public void Log_without_water_is_told_as_such()
    {
        Assert.Equal(["DW3060:2 the log holds no water at all"], Job.Told(Job.Log(_ => true, 0)));
        Assert.Equal(["DW3060:0 the log holds no water at all"], Job.Told([]));
        Assert.Equal((false, 48, 0), Figures(Job, []));
    }

    [Fact]
    public void Job_without_doses_is_finished_from_the_start()
    {
        SmallLog empty = new() { Doses = _ => 0 };
        Assert.Empty(empty.Told([]));
        Assert.Equal((true, 0, 0), Figures(empty, []));
    }

    private static (bool, int, int) Figures(SmallLog job, IEnumerable<LoggedDose> log) => job.Check(log) is var r ? (r.IsFinished, r.PlannedDoses, r.GivenDoses) : default;
}
