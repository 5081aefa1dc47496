using Dewstone.Compute.Survey;
using Dewstone.Model.Description;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Survey;

/// <summary>Times as run. Planned: layer k (from 1) lies spread at 100 (k - 1) s, its stations start 10 s and 30 s later; a dose of 10 mL takes 2.5 s.</summary>
public sealed class RunTimesTests
{
    private static readonly SmallLog Job = new();

    [Fact]
    public void Sound_log_gives_the_times_planned()
    {
        DoseSchedule times = Job.Check(Job.Log()).Schedule!;
        Assert.Equal([0.0, 100.0, 200.0, 300.0, 400.0], times.LayerSpreadSeconds);
        Assert.Equal((110.0, 130.0, 410.0, 430.0), (Start(times, 2, 1), Start(times, 2, 2), Start(times, 5, 1), Start(times, 5, 2)));
        Assert.All(Enumerable.Range(0, Job.Lattice.Count), i => Assert.Equal(i < 12 ? 0.0 : 2.5, times.PumpSeconds[i]));
    }

    [Fact]
    public void Pause_moves_all_that_follows()
    {
        DoseSchedule times = Job.Check(Job.Log().Select(r => Later(r, r.Layer >= 4 ? 70.0 : 0.0))).Schedule!;
        Assert.Equal([0.0, 100.0, 200.0, 370.0, 470.0], times.LayerSpreadSeconds);
        Assert.Equal((230.0, 380.0, 500.0), (Start(times, 3, 2), Start(times, 4, 1), Start(times, 5, 2)));
    }

    // The machine's clock is laid on the plan by the first planned dose; water where none was planned, 40 s ahead of it, sets no zero.
    [Fact]
    public void First_planned_dose_sets_the_clock()
    {
        SmallLog job = new() { Doses = p => p.Layer > 1 && p != new HeadPlace(2, 1, 2, 2) ? 1000 : 0 };
        DoseSchedule times = job.Check(job.Log(p => p == new HeadPlace(1, 1, 2, 2) ? 100 : job.Planned(p)).Select(r => r.Layer == 1 ? r with { StartedSeconds = SmallLog.Clock + 70.0 } : r)).Schedule!;
        Assert.Equal(110.0, times.DoseStartSeconds[job.Index(new HeadPlace(2, 1, 3, 2))]);
        Assert.Equal(70.0, times.DoseStartSeconds[job.Index(new HeadPlace(1, 1, 2, 2))]);
        Assert.Equal([0.0, 100.0], times.LayerSpreadSeconds[..2]);
    }

    // The first dose ever came before the lowest layer was planned to lie spread: then it lay spread by then.
    [Fact]
    public void Lowest_layer_lies_spread_before_its_first_dose()
    {
        HeadPlace early = new(1, 1, 2, 2);
        DoseSchedule times = Job.Check(Job.Log(p => p == early ? 100 : Job.Planned(p)).Select(r => r.Layer == 1 ? r with { StartedSeconds = SmallLog.Clock - 5.0 } : r)).Schedule!;
        Assert.Equal([-5.0, 100.0], times.LayerSpreadSeconds[..2]);
    }

    [Fact]
    public void Station_starts_with_the_first_of_its_needles()
    {
        DoseSchedule times = Job.Check(Job.Log().Select(r => Later(r, r.Layer > 2 ? r.Column + r.Row : 0.0))).Schedule!;

        // Needle 2,2 of station 1 starts 4 s late, needle 1,2 of station 2 3 s.
        Assert.Equal((214.0, 214.0, 233.0, 233.0), (Start(times, 3, 1), times.DoseStartSeconds[Job.Index(new HeadPlace(3, 1, 3, 4))], Start(times, 3, 2), times.DoseStartSeconds[Job.Index(new HeadPlace(3, 2, 1, 4))]));
        Assert.Equal(204.0, times.LayerSpreadSeconds[2]);
    }

    // A layer lies spread no earlier than the last dose of the one below was begun: layer 4 is logged 85 s early, at 225 s, when the second station of layer 3 began at 230 s.
    [Fact]
    public void Layer_is_not_spread_before_the_last_dose_below()
    {
        DoseSchedule times = Job.Check(Job.Log().Select(r => Later(r, r is { Layer: 4, Station: 1 } ? -85.0 : 0.0)).OrderBy(r => r.StartedSeconds)).Schedule!;
        Assert.Equal(230.0, times.LayerSpreadSeconds[3]);
        Assert.Equal((230.0, 330.0), (Start(times, 4, 1), Start(times, 4, 2)));

        // The last dose counts, not the last station: here layer 3 ends with its first.
        times = Job.Check(Job.Log().Select(r => Later(r, r is { Layer: 4, Station: 1 } ? -85.0 : r.Layer == 3 ? 60.0 - 40.0 * r.Station : 0.0)).OrderBy(r => r.StartedSeconds)).Schedule!;
        Assert.Equal((230.0, 210.0, 230.0), (Start(times, 3, 1), Start(times, 3, 2), times.LayerSpreadSeconds[3]));
    }

    // Layer 3 was run after layer 4: by its place it lies below, so it lay spread 10 s before its first dose, at 300 s, and layer 4 no earlier than its last, at 330 s.
    [Fact]
    public void Layer_out_of_order_starts_when_it_lies_spread()
    {
        DoseSchedule times = Job.Check(Job.Log().Select(r => Later(r, r.Layer == 3 ? 100.0 : r.Layer == 4 ? -100.0 : 0.0)).OrderBy(r => r.StartedSeconds)).Schedule!;
        Assert.Equal([0.0, 100.0, 300.0, 330.0, 400.0], times.LayerSpreadSeconds);
        Assert.Equal((310.0, 330.0, 330.0, 330.0, 410.0), (Start(times, 3, 1), Start(times, 3, 2), Start(times, 4, 1), Start(times, 4, 2), Start(times, 5, 1)));
    }

    // Of a layer without water only the order is known: it lies spread with the last dose below.
    [Fact]
    public void Layer_without_water_lies_spread_with_the_last_dose_below() =>
        Assert.Equal([0.0, 100.0, 200.0, 230.0, 400.0], Job.Check(Job.Log().Where(r => r.Layer != 4)).Schedule!.LayerSpreadSeconds);

    // Above a layer without doses, one without: both lie spread from the start.
    [Fact]
    public void Layers_without_doses_lie_spread_with_the_lowest()
    {
        SmallLog job = new() { Doses = p => p.Layer > 2 ? 1000 : 0 };
        Assert.Equal([0.0, 0.0, 200.0, 300.0, 400.0], job.Check(job.Log()).Schedule!.LayerSpreadSeconds);
    }

    [Fact]
    public void Layer_of_unplanned_water_lies_spread_with_its_first_dose()
    {
        SmallLog job = new() { Doses = p => p.Layer is 2 or 3 or 5 ? 1000 : 0 };
        Assert.Equal(310.0, job.Check(job.Log(p => p == new HeadPlace(4, 1, 2, 2) ? 100 : job.Planned(p))).Schedule!.LayerSpreadSeconds[3]);
    }

    [Fact]
    public void Place_dosed_twice_is_taken_at_its_first_time()
    {
        IReadOnlyList<LoggedDose> log = Job.Log();
        DoseSchedule times = Job.Check([.. log.Where(r => r.Layer <= 3), .. log.Where(r => r.Layer == 3).Select(r => Later(r, 60.0)), .. log.Where(r => r.Layer > 3)]).Schedule!;
        Assert.Equal((210.0, 230.0), (Start(times, 3, 1), Start(times, 3, 2)));
        Assert.Equal(5.0, Pump(times, 3, 1));
    }

    // 8 mL logged with 3 s are 3 s; without a time, or with none worth it, 8 mL at 4 mL/s are 2 s; at the needle's own 2 mL/s, 4 s; nothing is nothing.
    [Theory]
    [InlineData(800, 3.0, null, 3.0)]
    [InlineData(800, null, null, 2.0)]
    [InlineData(800, 0.0, null, 2.0)]
    [InlineData(800, null, 2.0, 4.0)]
    [InlineData(0, 3.0, null, 0.0)]
    public void Pump_runs_as_logged_else_by_volume_and_flow(int given, double? seconds, double? flow, double expected)
    {
        SmallLog job = new() { Needles = [SmallLog.Needle(2, 2, flow: flow)] };
        HeadPlace one = new(3, 1, 2, 2);
        DoseSchedule times = job.Check(job.Log(p => p == one, given).Select(r => SmallLog.Place(r) == one ? r with { PumpSeconds = seconds } : r)).Schedule!;
        Assert.Equal(expected, times.PumpSeconds[job.Index(one)]);
    }

    [Fact]
    public void Doses_before_a_stop_keep_their_planned_times()
    {
        SmallLog job = new() { Stop = new PrintStop { JobFingerprint = "wrackline", AfterLayer = 3, Station = 0, PauseMilliseconds = 60_000 } };
        DoseSchedule times = job.Check(job.Log().Where(r => r.Layer > 3).Select(r => r with { PumpSeconds = 2.7 })).Schedule!;
        Assert.Equal((110.0, 230.0, 2.5, 2.7), (times.DoseStartSeconds[job.Index(new HeadPlace(2, 1, 2, 2))], times.DoseStartSeconds[job.Index(new HeadPlace(3, 2, 2, 2))], Pump(times, 3, 2), Pump(times, 4, 2)));
    }

    private static double Start(DoseSchedule times, int layer, int station) => times.DoseStartSeconds[Job.Index(new HeadPlace(layer, station, 2, 2))];

    private static double Pump(DoseSchedule times, int layer, int station) => times.PumpSeconds[Job.Index(new HeadPlace(layer, station, 2, 2))];

    private static LoggedDose Later(LoggedDose row, double seconds) => row with { StartedSeconds = row.StartedSeconds + seconds };
}
