using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Numerics;
using Dewstone.Compute.Sequencing;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Dosing;

public sealed class RestSolverTests : IClassFixture<RestSolverTests.Cube>
{
    private static readonly Parallelism Two = new(2);
    private static readonly DoseSolverOptions Options = new();

    private readonly Cube cube;

    public RestSolverTests(Cube cube) => this.cube = cube;

    private JobDescription Stopped(long pauseMilliseconds, NeedleTable? needles = null) => cube.Job with
    {
        Needles = needles,
        Stop = new PrintStop { JobFingerprint = "", AfterLayer = 4, PauseMilliseconds = pauseMilliseconds, NeedlesBefore = cube.Job.Needles },
    };

    private RestResult Solve(JobDescription job) => RestSolver.Solve(
        job, cube.Shape, cube.Place.Placement!, cube.Doses, cube.Doses, Options, Two, null, TestContext.Current.CancellationToken);

    [Fact]
    public void Doses_that_still_serve_are_kept_to_the_hundredth()
    {
        RestResult rest = Solve(Stopped(1_000));
        Assert.False(rest.Redosed);
        Assert.Equal(cube.Doses.CentiMillilitres, rest.Doses.CentiMillilitres);
        Assert.Equal(cube.Doses.Steps, rest.Doses.Steps);
        Assert.True(rest.AsTabledLitres <= (1.0 + RestSolver.ServesShare) * rest.InOneGoLitres);
    }

    [Fact]
    public void Needle_that_died_is_answered_by_its_neighbours_and_what_was_given_stays()
    {
        Lattice lattice = cube.Place.Lattice!;
        (int column, int row) = new DoseRounder(cube.Job, lattice).Needle(lattice.Index(lattice.Columns / 2, lattice.Rows / 2, 0));
        NeedleTable dead = new() { Needles = [new NeedleState { Column = column, Row = row, Board = "", Channel = "", Condition = NeedleCondition.Blocked, Gain = 1.0 }] };
        JobDescription job = Stopped(0, dead);
        bool[] done = DoneDoses.Of(job, lattice);
        DoseRounder rounder = new(job with { Stop = null }, lattice);
        RestResult rest = Solve(job);
        Assert.True(rest.Redosed);
        Assert.True(rest.ChosenLitres < rest.AsTabledLitres, $"{rest.ChosenLitres} against {rest.AsTabledLitres} L untouched");
        bool anyOfIt = false;
        for (int i = 0; i < lattice.Count; i++)
        {
            if (done[i])
            {
                Assert.Equal(cube.Doses.CentiMillilitres[i], rest.Doses.CentiMillilitres[i]);
                anyOfIt |= rounder.IsBlocked(i) && rest.Doses.CentiMillilitres[i] > 0;
            }
            else if (rounder.IsBlocked(i))
            {
                Assert.Equal(0, rest.Doses.CentiMillilitres[i]);
            }
        }

        Assert.True(anyOfIt, "the needle gave water before it died");
    }

    [Fact]
    public void After_the_window_no_water_crosses_the_joint_however_long_the_pause()
    {
        // Exact: nothing crosses into a layer that has stopped before the next is spread, so the lower part then holds what was delivered to it.
        // Below the window no order is claimed: what comes down and what goes up change by turns.
        (double inOneGo, double delivered) = Crossing(Stopped(0));
        Assert.True(Math.Abs(inOneGo) > 1e-4 * delivered, $"{inOneGo} m3 of {delivered} cross in one go");
        foreach (int seconds in (int[])[600, 1500, 7200])
        {
            Assert.InRange(Math.Abs(Crossing(Stopped(seconds * 1000L)).Crossed), 0.0, 1e-6 * delivered);
        }
    }

    // Net water that came down into the four lowest layers.
    private (double Crossed, double Delivered) Crossing(JobDescription job)
    {
        Lattice lattice = cube.Place.Lattice!;
        CellGrid grid = cube.Place.Cells!;
        (_, DoseSchedule schedule) = TimelineBuilder.Build(job, lattice, cube.Doses);
        BedProperties bed = BedProperties.From(job.Mix, job.LooseDensity, job.BedTemperature);
        MoistureResult moisture = WettingSolver.Solve(WettingProblem.Of(cube.Doses, grid, schedule, bed), Two, null, TestContext.Current.CancellationToken);
        bool[] done = DoneDoses.Of(job, lattice);
        double delivered = cube.Doses.CentiMillilitres.Where((_, i) => done[i]).Sum(dose => dose * 1e-8) - moisture.Refused.Where(r => done[r.Index]).Sum(r => r.CubicMetres);
        double held = FixedOrderSum.Of(moisture.VolumetricWaterContent.AsSpan(0, 4 * grid.CellsPerLayer * grid.Nx * grid.Ny)) * grid.CellCubicMetres;
        return (held - delivered, delivered);
    }

    /// <summary>A small cube, dosed once.</summary>
    public sealed class Cube
    {
        public Cube()
        {
            Job = Targets.SmallCube();
            Place = Placer.Place(Job, 6);
            Shape = ReefShapeBuilder.Build(Job.Unit).Shape;
            Doses = DoseSolver.Solve(Job, Shape, Place.Placement!, Place.Lattice!, Options, Two, null, CancellationToken.None).Doses;
        }

        internal JobDescription Job { get; }

        internal PlacementResult Place { get; }

        internal ReefShape Shape { get; }

        internal DosePlan Doses { get; }
    }
}
