using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Survey;

/// <summary>Pauses: a layer is planned every 100 s, its second station 20 s after the first; the window is 600 s, and two minutes more than planned are a pause.</summary>
public sealed class LongPausesTests
{
    private static readonly SmallLog Job = new();

    [Theory]
    [InlineData(120.0, null)]
    [InlineData(121.0, "DW3077:26 layer 4 got its first dose 3.7 min after layer 3, 1.7 min was planned")]
    [InlineData(500.0, "DW3077:26 layer 4 got its first dose 10 min after layer 3, 1.7 min was planned")]
    [InlineData(501.0, "DW3078:26 layer 4 got its first dose 10 min after layer 3, against a window of 10 min")]
    [InlineData(800.0, "DW3078:26 layer 4 got its first dose 15 min after layer 3, against a window of 10 min")]
    public void Pause_between_layers_is_told_by_its_length(double seconds, string? told) =>
        Assert.Equal(told is null ? [] : [told], Job.Told(Delayed(Job, r => r.Layer >= 4, seconds)));

    // Of the last layer the second station comes late: 20 s and the pause.
    [Theory]
    [InlineData(580.0, null)]
    [InlineData(581.0, "DW3078:49 layer 5 was watered in two goes, 10 min apart, against a window of 10 min")]
    public void Pause_within_a_layer_is_told_beyond_the_window(double seconds, string? told) =>
        Assert.Equal(told is null ? [] : [told], Job.Told(Delayed(Job, r => r is { Layer: 5, Station: 2 }, seconds)));

    // What is planned to take longer than the window is the job's affair: a second more is told where the plan stays within the window, not where it does not.
    [Theory]
    [InlineData(600.0, 0.0, 0, "DW3078:26 layer 4 got its first dose 10 min after layer 3, against a window of 10 min")]
    [InlineData(601.0, 0.0, 0, null)]
    [InlineData(1000.0, 600.0, 2, "DW3078:25 layer 3 was watered in two goes, 10 min apart, against a window of 10 min")]
    [InlineData(1000.0, 601.0, 2, null)]
    public void What_was_planned_beyond_the_window_is_no_cold_joint(double layer, double station, int late, string? told)
    {
        SmallLog job = new() { Starts = p => layer * (p.Layer - 1) + station * (p.Station - 1) };
        Assert.Equal(told is null ? [] : [told], job.Told(Delayed(job, r => late == 0 ? r.Layer >= 4 : r.Layer == 3 && r.Station == late, 1.0)));
    }

    [Fact]
    public void Without_times_no_pause_is_seen() =>
        Assert.Empty(Job.Told(Delayed(Job, r => r.Layer >= 4, 800.0).Select((r, i) => i == 3 ? r with { StartedSeconds = null } : r)));

    // The layer between got nothing, not even a row: 200 s are planned from layer 3 to layer 5, so that 120 s more are no pause and 121 s are.
    [Theory]
    [InlineData(120.0, 0)]
    [InlineData(121.0, 1)]
    public void Layer_without_rows_is_passed_over(double seconds, int told) => Assert.Equal(
        told, Job.Told(Delayed(Job, r => r.Layer >= 5, seconds).Where(r => r.Layer != 4)).Count(t => t.Contains("after layer 3, 3.3 min was planned", StringComparison.Ordinal)));

    // Layer 3 was run again ten minutes later: its rest did not come late.
    [Fact]
    public void Second_run_of_a_layer_is_not_the_rest_of_the_first()
    {
        IReadOnlyList<LoggedDose> log = Job.Log(), late = [.. Delayed(Job, r => r.Layer >= 3, 700.0)];
        Assert.Equal(["DW3061", "DW3078"], Job.Told([.. log.Where(r => r.Layer <= 3), .. late.Where(r => r.Layer >= 3)]).Select(t => t[..6]));
    }

    private static IEnumerable<LoggedDose> Delayed(SmallLog job, Func<LoggedDose, bool> which, double seconds) =>
        job.Log().Select(r => which(r) ? r with { StartedSeconds = r.StartedSeconds + seconds } : r);
}
