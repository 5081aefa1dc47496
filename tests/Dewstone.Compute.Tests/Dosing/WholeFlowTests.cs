using Dewstone.Compute.Dosing;
using Dewstone.Compute.Estimation;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Inspection;
using Dewstone.Compute.Numerics;
using Dewstone.Compute.Sequencing;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Dosing;

/// <summary>The whole way from a unit to its estimate on a small piece: what each step hands on must agree.</summary>
public sealed class WholeFlowTests
{
    private sealed record Outcome(
        PlacementResult Placed, TargetField Target, DoseResult Dosed, Timeline Timeline, MoistureResult Moisture, SolidSummary Solid, Estimate Estimate);

    private static Outcome Run(JobDescription job, int cells)
    {
        PlacementResult placed = Placer.Place(job, cells);
        ReefShape shape = ReefShapeBuilder.Build(job.Unit).Shape;
        TargetField target = Voxelizer.Voxelize(shape, placed.Placement!, placed.Cells!, new Parallelism(1), null, default);
        DoseResult dosed = PlainDoser.Dose(job, placed.Lattice!, target);
        (Timeline timeline, DoseSchedule schedule) = TimelineBuilder.Build(job, placed.Lattice!, dosed.Doses);
        BedProperties bed = BedProperties.From(job.Mix, job.LooseDensity, job.BedTemperature);
        MoistureResult moisture = WettingSolver.Solve(
            WettingProblem.Of(dosed.Doses, placed.Cells!, schedule, bed), new Parallelism(2), null, default);
        SolidSummary solid = SolidMeasure.Measure(target, moisture, HardenedSurface.Of(moisture, bed.Law, new Parallelism(2)), job.Unit.Require.WaterCement);
        return new Outcome(placed, target, dosed, timeline, moisture, solid, Estimator.Estimate(job, placed.Lattice!, solid, dosed.Doses, timeline));
    }

    private static ReefUnit Piece() => Samples.Box(0.4, 0.4, 0.3) with
    {
        Rounding = new Length(0.03),
        Require = new Requirements { WaterCement = new WaterCementBand(0.25, 0.60, 0.95), MinShapeMatch = 0.8 },
    };

    [Fact]
    public void Small_solid_piece_comes_out_as_wanted_with_the_water_of_its_tables()
    {
        JobDescription job = Samples.Job(Piece());

        Outcome o = Run(job, 8);

        // Conserved to a millionth of the water, the tables' sum being the truth.
        double tables = o.Dosed.Doses.TotalCentiMillilitres / 1e8;
        Assert.Equal(tables, o.Estimate.WaterCubicMetres);
        Assert.Equal(tables, o.Moisture.InjectedCubicMetres, 1e-6 * tables);
        Assert.Equal(tables, o.Moisture.FieldCubicMetres + o.Moisture.RefusedCubicMetres, 1e-6 * tables);
        Assert.Empty(WaterCheck.Check(o.Placed.Placement!, o.Placed.Lattice!, o.Moisture));
        Assert.True(o.Solid.ShapeMatch > 0.85, $"shape match {o.Solid.ShapeMatch:0.000}");
        Assert.InRange(o.Solid.HardenedCubicMetres / o.Target.CubicMetres, 0.95, 1.15);
        Assert.InRange(o.Solid.MeanWaterCement, 0.42, 0.53);
        Assert.True(o.Solid.WaterInHardenedCubicMetres <= o.Moisture.FieldCubicMetres);
        Assert.DoesNotContain(RequirementCheck.Check(job, o.Solid, o.Estimate).Findings, f => f.Severity == Severity.Error);
        TestContext.Current.SendDiagnosticMessage(
            $"match {o.Solid.ShapeMatch:0.0000}, volume {o.Solid.HardenedCubicMetres / o.Target.CubicMetres:0.0000}, mean w/c {o.Solid.MeanWaterCement:0.0000}, in band {o.Solid.ShareInBand:0.0000}, fresh {o.Estimate.FreshKilograms:0.00} kg");
    }

    [Fact]
    public void Shifted_layers_go_the_whole_way_too()
    {
        Outcome o = Run(Samples.Job(Piece() with { Place = new PlacementWish { ShiftedLayers = true } }), 6);

        double tables = o.Dosed.Doses.TotalCentiMillilitres / 1e8;
        Assert.Equal(tables, o.Moisture.FieldCubicMetres + o.Moisture.RefusedCubicMetres, 1e-6 * tables);
        Assert.True(o.Solid.ShapeMatch > 0.8, $"shape match {o.Solid.ShapeMatch:0.000}");
    }

    /// <summary>A unit that fills the bin to its walls: shifted voxels that would leave the window get no dose, so the solver is not asked for water outside its cells.</summary>
    [Fact]
    public void Unit_from_wall_to_wall_with_shifted_layers_can_be_wetted()
    {
        Printer printer = Samples.SmallPrinter(6, 6, 4);
        printer = printer with { Bin = new Bin(new Length(0.33), new Length(0.30), new Length(0.2)) };

        Outcome o = Run(Samples.Job(Samples.Box(0.3, 0.3, 0.15) with { Place = new PlacementWish { ShiftedLayers = true } }, printer: printer), 4);

        double tables = o.Dosed.Doses.TotalCentiMillilitres / 1e8;
        Assert.Equal(tables, o.Moisture.FieldCubicMetres + o.Moisture.RefusedCubicMetres, 1e-6 * tables);
    }
}
