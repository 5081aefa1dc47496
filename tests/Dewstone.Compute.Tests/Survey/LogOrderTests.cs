using Dewstone.Compute.Survey;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Survey;

/// <summary>Stations out of order, and clocks that go back. In the plan a layer starts every 100 s, its second station 20 s after the first.</summary>
public sealed class LogOrderTests
{
    private static readonly SmallLog Job = new();

    private static readonly string[] LateLayer =
    [
        "DW3075:26 layer 3, station 1 was watered after layer 4, station 2", "DW3075:32 layer 3, station 2 was watered after layer 4, station 2",
    ];

    [Fact]
    public void Layer_watered_late_is_told_once_a_station() => Assert.Equal(LateLayer, Job.Told(Ordered(Exchanged())));

    [Fact]
    public void Station_watered_late_is_told() => Assert.Equal(
        ["DW3075:20 layer 3, station 1 was watered after layer 3, station 2"],
        Job.Told(Ordered(Job.Log().Select(r => r.Layer == 3 ? At(r, 3, 3 - r.Station) : r))));

    [Fact]
    public void Without_times_the_order_of_the_log_counts() => Assert.Equal(LateLayer, Job.Told(Ordered(Exchanged()).Select(r => r with { StartedSeconds = null })));

    // A log may stand needle by needle: with times it is they that tell what came first.
    [Fact]
    public void With_times_a_log_may_stand_needle_by_needle()
    {
        Assert.Empty(Job.Told(Job.Log().OrderBy(r => (r.Column, r.Row))));
        Assert.Equal(LateLayer.Select(Message), Job.Told(Exchanged().OrderBy(r => (r.Column, r.Row, r.StartedSeconds))).Select(Message));

        static string Message(string told) => told[(told.IndexOf(' ', StringComparison.Ordinal) + 1)..];
    }

    // Layer 4 starts at 310 s, station 2 of layer 3 at 230 s: after 80 s they stand at the same time, after 81 s the clock has gone back a second.
    [Theory]
    [InlineData(80.0, null)]
    [InlineData(81.0, "DW3076:26 layer 4, station 1, needle 2,2 is logged as started 1 s before the row above it")]
    [InlineData(117.5, "DW3076:26 layer 4, station 1, needle 2,2 is logged as started 37.5 s before the row above it")]
    public void Clock_that_goes_back_is_told_and_its_times_are_not_used(double seconds, string? told)
    {
        RunLogReport report = Job.Check(Job.Log().Select(r => Later(r, r.Layer >= 4 ? -seconds : 0.0)));
        Assert.Equal(told is null ? [] : [told], report.Findings.Select(SmallLog.Say));
        Assert.Equal(told is null, report.Schedule is not null);
    }

    [Fact]
    public void Clock_that_goes_back_again_is_counted() => Assert.Equal(
        ["DW3076:26 layer 4, station 1, needle 2,2 is logged as started 70 s before the row above it; the clock goes back 2 times"],
        Job.Told(Job.Log().Select(r => Later(r, r.Layer switch { 4 => -150.0, 5 => -450.0, _ => 0.0 }))));

    // Within a station the clock may go back too: the places there are the same.
    [Fact]
    public void Clock_that_goes_back_within_a_station_is_told() => Assert.Equal(
        ["DW3076:28 layer 4, station 1, needle 2,3 is logged as started 5 s before the row above it"],
        Job.Told(Job.Log().Select(r => Later(r, r.Layer > 4 || (r.Layer == 4 && (r.Station > 1 || r.Row > 2)) ? -5.0 : 0.0))));

    // In a log that is not sorted and whose clock goes back at each of its nine needles nobody can tell what came first.
    [Fact]
    public void Without_order_and_clock_nothing_is_told_of_the_order() => Assert.Equal(
        ["DW3076:4 layer 4, station 2, needle 1,2 is logged as started 50 s before the row above it; the clock goes back 9 times"],
        Job.Told(Job.Log().Select(r => Later(r, r.Layer >= 4 ? -150.0 : 0.0)).OrderBy(r => (r.Column, r.Row))));

    // A single dose again after all others, in a log without times: it is given twice, its station is not late.
    [Fact]
    public void Repeated_row_is_not_late() => Assert.Equal(
        ["DW3072"], Job.Told([.. Job.Log().Select(r => r with { StartedSeconds = null }), Job.Log()[14] with { StartedSeconds = null }]).Select(t => t[..6]));

    // Half of station 1 was run, then station 2, then all of station 1: what came late there is a part of the second run.
    [Fact]
    public void Station_that_was_run_twice_is_not_told_as_late()
    {
        LoggedDose[] one = [.. Job.Log().Where(r => r is { Layer: 3, Station: 1 })], log = [.. Job.Log().Where(r => r is not { Layer: 3, Station: 1 })];
        Assert.Equal(
            ["DW3061:23 layer 3, station 1 was run twice: 0.09 L where 0.06 L was planned"],
            Job.Told([.. log.Where(r => r.Layer < 3), .. one.Take(3), .. log.Where(r => r.Layer == 3), .. one.Select(r => Later(r, 40.0)), .. log.Where(r => r.Layer > 3)]));
    }

    // Layer 4 at the times of layer 3 and the other way round.
    private static IEnumerable<LoggedDose> Exchanged() => Job.Log().Select(r => r.Layer is 3 or 4 ? At(r, 7 - r.Layer, r.Station) : r);

    private static IEnumerable<LoggedDose> Ordered(IEnumerable<LoggedDose> log) => log.OrderBy(r => r.StartedSeconds);

    private static LoggedDose At(LoggedDose row, int layer, int station) => row with { StartedSeconds = SmallLog.Clock + Job.Starts(new HeadPlace(layer, station, row.Column, row.Row)) };

    private static LoggedDose Later(LoggedDose row, double seconds) => row with { StartedSeconds = row.StartedSeconds + seconds };
}
