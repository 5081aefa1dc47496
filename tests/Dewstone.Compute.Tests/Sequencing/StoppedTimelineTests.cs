using Dewstone.Compute.Dosing;
using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Sequencing;

public sealed class StoppedTimelineTests
{
    private const long Minutes25 = 1_500_000;

    private readonly JobDescription job;
    private readonly Lattice lattice;
    private readonly DosePlan doses;

    public StoppedTimelineTests()
    {
        JobDescription whole = Samples.Job(Samples.Box(0.2, 0.2, 0.15));
        job = whole with { Printer = whole.Printer with { Head = whole.Printer.Head with { Rows = 12 } } };
        lattice = Placer.Place(job, 2).Lattice!;
        doses = Samples.Doses(lattice, (i, j, k) => k == 0 ? 0 : 1000 + 100 * i + 10 * j);
    }

    private static PrintStop Stop(int after, int station, long pause, NeedleTable? needles = null) =>
        new() { JobFingerprint = "", AfterLayer = after, Station = station, PauseMilliseconds = pause, NeedlesBefore = needles };

    public static TheoryData<int, int> Stops()
    {
        TheoryData<int, int> stops = [];
        for (int after = 0; after < 4; after++)
        {
            for (int station = after == 0 ? 1 : 0; station <= 2; station++)
            {
                stops.Add(after, station);
            }
        }

        return stops;
    }

    [Theory]
    [MemberData(nameof(Stops))]
    public void No_pause_changes_nothing(int after, int station)
    {
        (Timeline whole, DoseSchedule schedule) = TimelineBuilder.Build(job, lattice, doses);
        (Timeline stopped, DoseSchedule again) = TimelineBuilder.Build(job with { Stop = Stop(after, station, 0) }, lattice, doses);
        Assert.Equal(whole.Steps, stopped.Steps);
        Assert.Equal(schedule.DoseStartSeconds, again.DoseStartSeconds);
    }

    [Theory]
    [MemberData(nameof(Stops))]
    public void Pause_moves_every_step_after_the_stop_by_its_length_and_none_before(int after, int station)
    {
        PrintStop stop = Stop(after, station, Minutes25);
        MachineStep[] whole = [.. TimelineBuilder.Build(job, lattice, doses).Timeline.Steps];
        MachineStep[] stopped = [.. TimelineBuilder.Build(job with { Stop = stop }, lattice, doses).Timeline.Steps];
        int done = whole.Count(step => stop.IsDone(step.Layer, step.Station, step.Action));
        if (done == whole.Length)
        {
            Assert.Equal(whole, stopped);
            return;
        }

        Assert.Equal(whole[..done], stopped[..done]);
        Assert.Equal((MachineAction.Pause, Minutes25), (stopped[done].Action, stopped[done].Milliseconds));
        Assert.Equal(
            whole[done..].Select(step => step with { Number = step.Number + 1, StartMilliseconds = step.StartMilliseconds + Minutes25 }), stopped[(done + 1)..]);
    }

    [Fact]
    public void Needles_of_before_time_what_was_done_and_those_of_now_what_is_left()
    {
        // 10 mL and more at 4 mL/s before; the one slow needle of now, 1 mL/s, takes 4 times as long wherever it has still to dose.
        NeedleState slow = new() { Column = lattice.FirstColumn + 1, Row = lattice.FirstRow + 1, Board = "", Channel = "", Condition = NeedleCondition.Ok, Gain = 1.0, Flow = FlowRate.FromMillilitresPerSecond(1) };
        JobDescription stopped = job with { Needles = new NeedleTable { Needles = [slow] }, Stop = Stop(2, 0, 0) };
        double[] pump = TimelineBuilder.Build(stopped, lattice, doses).Schedule.PumpSeconds;
        Assert.Equal(2.5, pump[lattice.Index(0, 0, 1)]);
        Assert.Equal(10.0, pump[lattice.Index(0, 0, 2)]);
    }
}
