using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Inspection;
using Dewstone.Compute.Numerics;
using Dewstone.Compute.Sequencing;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Dosing;

public sealed class DoseSolverTests
{
    private static readonly Parallelism Two = new(2);

    private static PlacementResult Place(JobDescription job, int cells = 6) => Placer.Place(job, cells);

    private static DoseResult Solve(JobDescription job, bool correct = true, int threads = 2, int solves = 6, IProgress<Progress>? progress = null)
    {
        PlacementResult place = Place(job);
        ReefShape shape = ReefShapeBuilder.Build(job.Unit).Shape;
        DoseSolverOptions options = new() { Correct = correct, CoarseSolves = solves, FineSolves = solves };
        return DoseSolver.Solve(
            job, shape, place.Placement!, place.Lattice!, options, new Parallelism(threads), progress, TestContext.Current.CancellationToken);
    }

    /// <summary>With the solves the program takes.</summary>
    internal static DoseResult Full(JobDescription job)
    {
        PlacementResult place = Place(job);
        return DoseSolver.Solve(
            job, ReefShapeBuilder.Build(job.Unit).Shape, place.Placement!, place.Lattice!, new DoseSolverOptions(), Two, null,
            TestContext.Current.CancellationToken);
    }

    /// <summary>What the only tunnel loses of its clear opening, metres.</summary>
    private static double Loss(JobDescription job, TargetField target, MoistureResult moisture)
    {
        BedProperties bed = BedProperties.From(job.Mix, job.LooseDensity, job.BedTemperature);
        OpeningPassages passages = new(ReefShapeBuilder.Build(job.Unit).Shape, Place(job, 8).Placement!, SolidField.Of(target, Two));
        return passages.Measure(SolidField.Of(HardenedSurface.Of(moisture, bed.Law, Two), Two), Two)[0].Clear.LossMetres;
    }

    internal static (TargetField Target, MoistureResult Moisture, SurfaceDeviationReport Surface, SolidSummary Solid) Judge(JobDescription job, DosePlan doses)
    {
        PlacementResult place = Place(job, 8);
        ReefShape shape = ReefShapeBuilder.Build(job.Unit).Shape;
        CancellationToken cancellation = TestContext.Current.CancellationToken;
        TargetField target = Voxelizer.Voxelize(shape, place.Placement!, place.Cells!, Two, null, cancellation);
        (_, DoseSchedule schedule) = TimelineBuilder.Build(job, place.Lattice!, doses);
        BedProperties bed = BedProperties.From(job.Mix, job.LooseDensity, job.BedTemperature);
        MoistureResult moisture = WettingSolver.Solve(WettingProblem.Of(doses, place.Cells!, schedule, bed), Two, null, cancellation);
        HardenedSurface hardened = HardenedSurface.Of(moisture, bed.Law, Two);
        SurfaceDeviationReport surface = SurfaceDeviation.Measure(shape, place.Placement!, target, moisture, hardened, Two);
        return (target, moisture, surface, SolidMeasure.Measure(target, moisture, hardened, job.Unit.Require.WaterCement));
    }

    private static JobDescription RandomJob(int seed)
    {
        Random draw = new(seed);
        JobDescription job = Targets.SmallCube();
        double width = 0.05 + 0.1 * draw.NextDouble(), up = 0.12 + 0.08 * draw.NextDouble();
        return job with
        {
            Unit = job.Unit with
            {
                OuterBox = new Size3(0.25 + 0.1 * draw.NextDouble(), 0.25, 0.3),
                Rounding = new Length(0.02),
                Cavities = [],
                Tunnels =
                [
                    new AxisTunnel
                    {
                        Name = "through", Along = Axis.X, At = new Point3(0.0, 0.125, up),
                        Section = new RectangularSection(new Length(width), new Length(width), new Length(0.0)),
                    },
                ],
            },
        };
    }

    /// <summary>The small cube judged on 8 cells, where neither rule was tuned: corrected doses match better and keep the tunnel wider.</summary>
    [Fact]
    public void Correction_of_the_small_cube_beats_the_best_single_dose_on_finer_cells()
    {
        JobDescription job = Targets.SmallCube();

        (TargetField target, MoistureResult plainMoisture, SurfaceDeviationReport plain, SolidSummary plainSolid) = Judge(job, Solve(job, correct: false).Doses);
        (_, MoistureResult betterMoisture, SurfaceDeviationReport better, SolidSummary betterSolid) = Judge(job, Solve(job).Doses);

        Assert.True(betterSolid.ShapeMatch > plainSolid.ShapeMatch + 0.01, $"{plainSolid.ShapeMatch} -> {betterSolid.ShapeMatch}");
        Assert.True(better.MeanMetres < plain.MeanMetres, $"{plain.MeanMetres} -> {better.MeanMetres}");
        Assert.True(better.Percentile95Metres < plain.Percentile95Metres, $"{plain.Percentile95Metres} -> {better.Percentile95Metres}");
        Assert.True(Loss(job, target, betterMoisture) < Loss(job, target, plainMoisture));
    }

    /// <summary>For random small units: never worse than the plain doses it starts from, within the limits, all water in the bed.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Correction_of_any_unit_is_never_worse_keeps_limits_and_loses_no_water(int seed)
    {
        JobDescription job = RandomJob(seed);
        DoseResult result = Solve(job, solves: 5);

        DoseStep[] fine = [.. result.History.Where(step => step.CellsPerPitch == 6)];
        Assert.Equal([DoseStepKind.Plain, .. Enumerable.Repeat(DoseStepKind.Corrected, 5)], fine.Select(step => step.Kind));
        Assert.InRange(result.History.Count, 11 + 3, 11 + 12);
        DoseStep best = fine.MinBy(step => step.Objective)!;
        Assert.Equal(result.Doses.TotalCentiMillilitres / 100.0, best.WaterMillilitres);
        Assert.True(best.Objective <= fine[0].Objective);

        Assert.All(result.Doses.CentiMillilitres, d => Assert.True(d == 0 || (d >= 200 && d / 100.0 <= result.Limits.UpperMillilitres)));
        MoistureResult moisture = Judge(job, result.Doses).Moisture;
        double litres = 0.0;
        foreach (float content in moisture.VolumetricWaterContent)
        {
            litres += content * moisture.Grid.CellCubicMetres * 1000.0;
        }

        Assert.Equal(result.Doses.TotalCentiMillilitres / 1e5, litres, 1e-4 * litres);
    }

    [Fact]
    public void Correction_gives_the_same_doses_for_any_number_of_threads()
    {
        JobDescription job = RandomJob(4);

        DoseResult one = Solve(job, threads: 1, solves: 4), three = Solve(job, threads: 3, solves: 4);

        Assert.Equal(one.Doses.Steps, three.Doses.Steps);
        Assert.Equal(one.History, three.History);
    }

    /// <summary>A column of dead needles in the small cube: doses around it take over water, and less of the wanted solid stays loose.</summary>
    [Fact]
    public void Correction_around_a_blocked_needle_wins_back_solid()
    {
        JobDescription whole = Targets.SmallCube();
        DosePlan sound = Solve(whole, solves: 6).Doses;
        Lattice lattice = sound.Lattice;
        int dead = Enumerable.Range(0, lattice.Columns * lattice.Rows).MaxBy(c => Enumerable.Range(0, lattice.Layers).Sum(k => sound.CentiMillilitres[k * lattice.Columns * lattice.Rows + c]));
        (int column, int row) = new DoseRounder(whole, lattice).Needle(dead);
        JobDescription blocked = whole with
        {
            Needles = new NeedleTable { Needles = [new NeedleState { Column = column, Row = row, Condition = NeedleCondition.Blocked }] },
        };
        DosePlan untouched = new DoseRounder(blocked, lattice).Round(Array.ConvertAll(sound.CentiMillilitres, d => d / 100.0));

        DosePlan corrected = Solve(blocked, solves: 8).Doses;

        Assert.Equal(0, corrected.CentiMillilitres[dead]);
        double before = Unset(blocked, untouched), after = Unset(blocked, corrected);
        Assert.True(after < before, $"{before:0.000} L -> {after:0.000} L");
    }

    [Fact]
    public void Correction_tells_its_misfit_as_it_falls()
    {
        Heard heard = new();

        DoseResult result = Solve(RandomJob(5), solves: 3, progress: heard);

        Assert.Equal(result.History.Count, heard.All.Count);
        Assert.All(heard.All, p => Assert.Matches(@"^misfit [0-9]+\.[0-9] L at [46] cells a voxel$", p.Detail));
    }

    /// <summary>Without correction each voxel gets its wanted share of one dose in whole mL: rounded back, all full voxels get the same.</summary>
    [Fact]
    public void Plain_doses_are_shares_of_the_best_whole_millilitre()
    {
        DoseResult result = Solve(RandomJob(6), correct: false);

        int[] full = [.. result.Doses.CentiMillilitres.Where((_, i) => result.VoxelFractions[i] >= 1.0 - 1e-9).Distinct()];
        Assert.Equal(0, Assert.Single(full) % 100);
        Assert.All(result.History, step => Assert.Equal(DoseStepKind.Plain, step.Kind));

        // The search is on coarse cells; what it found is judged on fine ones at the end, and that is what is given.
        DoseStep best = result.History[^1];
        Assert.All(result.History.SkipLast(1), step => Assert.Equal(4, step.CellsPerPitch));
        Assert.Equal(6, best.CellsPerPitch);
        Assert.Equal(result.Doses.TotalCentiMillilitres / 100.0, best.WaterMillilitres);
    }

    /// <summary>Started from an earlier job's doses, a tunnel 1 mm wider moves doses near it and none farther than three pitches from it.</summary>
    [Fact]
    public void Doses_like_an_earlier_job_move_only_near_the_change()
    {
        JobDescription before = Hollowed(0.08), after = Hollowed(0.08, diameter: 0.101);
        DosePlan earlier = Solve(before, solves: 3).Doses;
        PlacementResult place = Place(after);
        DoseSolverOptions options = new()
        {
            CoarseSolves = 1,
            FineSolves = 3,
            LikeMillilitres = [.. earlier.CentiMillilitres.Select(d => d / 100.0)],
            LikeShape = ReefShapeBuilder.Build(before.Unit).Shape,
        };

        DosePlan now = DoseSolver.Solve(
            after, ReefShapeBuilder.Build(after.Unit).Shape, place.Placement!, place.Lattice!, options, Two, null, TestContext.Current.CancellationToken).Doses;

        Point3 centre = place.Placement!.ToPrinter(new Point3(0.08, 0.15, 0.15));
        double reach = 0.0505 + 0.0254 * Math.Sqrt(3.0) + 3 * 0.0508;
        int far = 0;
        for (int i = 0; i < now.Steps.Length; i++)
        {
            Lattice lattice = now.Lattice;
            Point3 apart = lattice.Tip(i % lattice.Columns, i / lattice.Columns % lattice.Rows, i / (lattice.Columns * lattice.Rows)) - centre;
            if (apart.Norm > reach)
            {
                far++;
                Assert.InRange(now.Steps[i] - earlier.Steps[i], -2, 2);
            }
        }

        Assert.True(far > 50, $"{far} positions are far");
        Assert.NotEqual(earlier.Steps, now.Steps);
    }

    // A cube of six voxels a side with one round hollow in it.
    private static JobDescription Hollowed(double x, double diameter = 0.1)
    {
        JobDescription job = Targets.SmallCube();
        return job with
        {
            Unit = new ReefUnit
            {
                Name = "hollowed",
                OuterBox = new Size3(0.3048, 0.3048, 0.3048),
                Rounding = new Length(0.03),
                Cavities = [new FormedCavity { Name = "hollow", Form = new SphereForm { Centre = new Point3(x, 0.15, 0.15), Diameter = new Length(diameter) } }],
            },
        };
    }

    private static double Unset(JobDescription job, DosePlan doses)
    {
        (TargetField target, MoistureResult moisture, _, _) = Judge(job, doses);
        double litres = 0.0;
        for (int i = 0; i < target.Fraction.Length; i++)
        {
            litres += moisture.Hardened[i] == 0 ? target.Fraction[i] * target.Grid.CellCubicMetres * 1000.0 : 0.0;
        }

        return litres;
    }

    private sealed class Heard : IProgress<Progress>
    {
        public List<Progress> All { get; } = [];

        public void Report(Progress value) => All.Add(value);
    }
}
