using Dewstone.Compute.Survey;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Survey;

/// <summary>A station was run twice when half of its doses at least, and two, stand in the log twice. "Twice" here: again at once after the first run.</summary>
public sealed class RepeatedStationsTests
{
    // 4.4 L/100 a dose: six doses are 0.264 L.
    private static readonly SmallLog Large = new() { Doses = p => p.Layer > 1 ? 4400 : 0 };

    [Fact]
    public void Station_run_twice_is_told_at_its_first_repeated_row() => Assert.Equal(
        ["DW3061:26 layer 3, station 2 was run twice: 0.53 L where 0.26 L was planned"], Large.Told(Again(Large.Log(), r => r is { Layer: 3, Station: 2 })));

    [Fact]
    public void Layer_of_which_all_stations_were_run_twice_is_told_once()
    {
        Assert.Equal(["DW3061:20 layer 3 was run twice: 1.06 L where 0.53 L was planned"], Large.Told(Again(Large.Log(), r => r.Layer == 3)));
        Assert.Equal(
            ["DW3061:20 layer 3 was run twice: 1.06 L where 0.53 L was planned", "DW3061:62 layer 5, station 2 was run twice: 0.53 L where 0.26 L was planned"],
            Large.Told(Again(Again(Large.Log(), r => r.Layer == 3), r => r is { Layer: 5, Station: 2 })));
    }

    // Of six doses three are half; of three two are more than half; of two one is half but alone.
    [Theory]
    [InlineData(4, 3, true)]
    [InlineData(4, 2, false)]
    [InlineData(2, 2, true)]
    [InlineData(2, 1, false)]
    public void Half_of_the_doses_and_two_make_a_run(int lastRow, int repeated, bool isRun)
    {
        SmallLog job = new() { Doses = p => p.Layer > 1 && p.Row <= lastRow ? 1000 : 0 };
        HeadPlace[] places = [.. job.Log().Where(r => r is { Layer: 3, Station: 2 }).Take(repeated).Select(SmallLog.Place)];
        Assert.Equal(Enumerable.Repeat(isRun ? "DW3061" : "DW3072", isRun ? 1 : repeated), job.Check(Again(job.Log(), r => places.Contains(SmallLog.Place(r)))).Findings.Select(f => f.Code));
    }

    [Fact]
    public void Rows_of_nothing_do_not_repeat_a_station() => Assert.Empty(
        Large.Told(Large.Log().SelectMany(r => r is { Layer: 3, Station: 2 } ? [r, r with { CentiMillilitres = 0, PumpSeconds = 0.0 }] : new[] { r })));

    [Fact]
    public void Dose_that_was_not_repeated_is_judged_by_itself()
    {
        SmallLog job = new();
        HeadPlace lacking = new(3, 1, 3, 4);
        IEnumerable<LoggedDose> log = Again(job.Log(p => p == lacking, 500), r => r is { Layer: 3, Station: 1 } && SmallLog.Place(r) != lacking);
        Assert.Equal(
            ["DW3061:20 layer 3, station 1 was run twice: 0.11 L where 0.06 L was planned", "DW3070:19 layer 3, station 1, needle 3,4: 5.0 mL delivered, 10.0 mL planned"],
            job.Told(log));
    }

    // Each station's rows again after its last.
    private static List<LoggedDose> Again(IEnumerable<LoggedDose> log, Func<LoggedDose, bool> which) =>
        [.. log.GroupBy(r => (r.Layer, r.Station)).SelectMany(station => station.Concat(station.Where(which)))];
}
