using Dewstone.Compute.Dosing;
using Dewstone.Compute.Estimation;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Inspection;
using Dewstone.Compute.Numerics;
using Dewstone.Compute.Sequencing;
using Dewstone.Compute.Studies;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Studies;

/// <summary>A small block with a drain, plainly dosed, ready to be tried.</summary>
internal static class TriedJob
{
    public const int Cells = 4;

    /// <summary>The block; it requires of everything something.</summary>
    public static ReefUnit Unit { get; } = Samples.Box(0.25, 0.2, 0.2) with
    {
        Rounding = new Length(0.02),
        Tunnels =
        [
            new AxisTunnel { Name = "wide", Along = Axis.X, At = new Point3(0.0, 0.1, 0.1), Section = new RoundSection(new Length(0.05)) },
            new AxisTunnel
            {
                Name = "drain", Along = Axis.Y, At = new Point3(0.125, 0.0, 0.1), Section = new RoundSection(new Length(0.1)), Clear = new Length(0.01),
            },
        ],
        Require = new Requirements
        {
            MaxMass = new Mass(30),
            WaterCement = new WaterCementBand(0.25, 0.60, 0.5),
            MinShapeMatch = 0.5,
            MinWall = new Length(0.03),
            MaxLoosePieces = 0,
            MaxTrappedMix = new Mass(1),
        },
    };

    public static JobDescription Job(ReefUnit? unit = null, Tonight? tonight = null, NeedleTable? needles = null) =>
        Samples.Job(unit ?? Unit, printer: Samples.SmallPrinter(8, 7, 6), needles: needles) with { Tonight = tonight };

    /// <summary>Doses of the best plain rule, and the requirements with the figures of the full inspection on the cells of the trials.</summary>
    public static TrialsQuestion Question(JobDescription job, int trials, TrialSpreads? spreads = null)
    {
        Parallelism two = new(2);
        CancellationToken token = TestContext.Current.CancellationToken;
        ReefShape shape = ReefShapeBuilder.Build(job.Unit).Shape;
        PlacementResult placed = Placer.Place(job, Cells);
        (UnitPlacement placement, Lattice lattice, CellGrid grid) = (placed.Placement!, placed.Lattice!, placed.Cells!);
        TargetField target = Voxelizer.Voxelize(shape, placement, grid, two, null, token);
        DosePlan doses = PlainDoser.Dose(job, lattice, target).Doses;
        (Timeline timeline, DoseSchedule schedule) = TimelineBuilder.Build(job, lattice, doses);
        BedProperties bed = BedProperties.From(job.Mix, job.LooseDensity, job.BedTemperature);
        MoistureResult moisture = WettingSolver.Solve(WettingProblem.Of(doses, grid, schedule, bed), two, null, token);
        HardenedSurface surface = HardenedSurface.Of(moisture, bed.Law, two);
        SolidSummary solid = SolidMeasure.Measure(target, moisture, surface, job.Unit.Require.WaterCement);
        return new TrialsQuestion
        {
            Job = job,
            Shape = shape,
            Placement = placement,
            Doses = doses,
            Timeline = timeline,
            Schedule = schedule,
            Requirements =
            [
                .. RequirementCheck.Check(job, solid, Estimator.Estimate(job, lattice, solid, doses, timeline)).Results,
                .. Inspector.Inspect(job, shape, placement, target, moisture, surface, solid, two, token).Requirements,
            ],
            Trials = trials,
            Spreads = spreads ?? TrialSpreads.Of(job),
            Cells = Cells,
        };
    }

    public static TrialsReport Run(TrialsQuestion question, int threads = 2) =>
        TrialsStudy.Run(question, new Parallelism(threads), null, TestContext.Current.CancellationToken);
}
