using Dewstone.Compute.Geometry;
using Dewstone.Compute.Inspection;
using Dewstone.Compute.Tests.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Inspection;

public sealed class SurfaceDeviationTests
{
    private const double Cell = 0.005;

    private static readonly Parallelism Two = new(2);

    private static readonly Point3 Middle = new(0.1, 0.1, 0.1);

    private static (ReefShape Shape, UnitPlacement Placement, TargetField Target) Placed(ReefUnit unit, CellGrid grid, Point3 corner)
    {
        ReefShape shape = SampleUnits.Shape(unit);
        UnitPlacement placement = new() { QuarterTurns = 0, Corner = corner, UnitBox = unit.OuterBox };
        return (shape, placement, Voxelizer.Voxelize(shape, placement, grid, Two, null, TestContext.Current.CancellationToken));
    }

    /// <summary>A box of 100 mm rounded to a ball of radius R = 50 mm, hardened as a ball about the same middle.</summary>
    private static SurfaceDeviationReport MeasureBall(double radius, int threads = 2)
    {
        CellGrid grid = FrontFields.Grid(40, 40, 40, Cell);
        (ReefShape shape, UnitPlacement placement, TargetField target) = Placed(
            SampleUnits.Plain(0.1, 0.1, 0.1) with { Rounding = new Length(0.05) }, grid, new Point3(0.05, 0.05, 0.05));
        MoistureResult moisture = FrontFields.Moisture(grid, p => FrontFields.Ball(p, Middle, radius));
        return SurfaceDeviation.Measure(shape, placement, target, moisture, FrontFields.Surface(moisture), new Parallelism(threads));
    }

    /// <summary>A block of 120 mm with loose mix in a cube of some cells, at a depth of its nearest wall under the faces.</summary>
    private static SurfaceDeviationReport MeasurePocket(int depthCells, int edgeCells, bool wantedEmpty = false)
    {
        CellGrid grid = FrontFields.Grid(32, 32, 32, Cell);
        (ReefShape shape, UnitPlacement placement, TargetField target) = Placed(
            SampleUnits.Plain(0.12, 0.12, 0.12), grid, new Point3(0.02, 0.02, 0.02));
        double low = 0.02 + depthCells * Cell, high = low + edgeCells * Cell;
        bool InPocket(Point3 p) => p.X > low && p.X < high && p.Y > low && p.Y < high && p.Z > low && p.Z < high;
        MoistureResult moisture = FrontFields.Moisture(
            grid, p => InPocket(p) ? Cell : shape.SignedDistance(placement.ToUnit(p)));
        if (wantedEmpty)
        {
            for (int i = 0; i < target.Fraction.Length; i++)
            {
                Point3 centre = grid.Centre(i % grid.Nx, i / grid.Nx % grid.Ny, i / (grid.Nx * grid.Ny));
                target.Fraction[i] = InPocket(centre) ? 0f : target.Fraction[i];
            }
        }

        return SurfaceDeviation.Measure(shape, placement, target, moisture, FrontFields.Surface(moisture), Two);
    }

    [Theory]
    [InlineData(0.030)]
    [InlineData(0.042)]
    [InlineData(0.058)]
    [InlineData(0.071)]
    public void Deviation_of_two_balls_is_the_difference_of_their_radii(double radius)
    {
        SurfaceDeviationReport report = MeasureBall(radius);

        Assert.Equal(Math.Abs(radius - 0.05), report.MeanMetres, 0.5 * Cell);
        Assert.Equal(radius - 0.05, report.SignedMeanMetres, 0.5 * Cell);
        Assert.Equal(Math.Abs(radius - 0.05), report.Percentile95Metres, 0.5 * Cell);
        Assert.Equal(4.0 / 3.0 * Math.PI * radius * radius * radius, report.HardenedCubicMetres, 0.02 * report.HardenedCubicMetres);
        Assert.Equal(0.0, report.PocketSquareMetres);
    }

    [Fact]
    public void Deviation_does_not_depend_on_the_threads()
    {
        SurfaceDeviationReport one = MeasureBall(0.058, 1), three = MeasureBall(0.058, 3);

        Assert.Equal(one, three);
    }

    /// <summary>A box whose faces lie between cells, hardened as wanted: only the cut corners of the mesh are left, far less than a tenth of a cell.</summary>
    [Fact]
    public void Deviation_of_a_box_from_itself_is_next_to_nothing()
    {
        CellGrid grid = FrontFields.Grid(32, 32, 32, Cell);
        (ReefShape shape, UnitPlacement placement, TargetField target) = Placed(
            SampleUnits.Plain(0.12, 0.1, 0.11), grid, new Point3(0.02, 0.02, 0.02));
        MoistureResult moisture = FrontFields.Moisture(grid, p => shape.SignedDistance(placement.ToUnit(p)));

        SurfaceDeviationReport report = SurfaceDeviation.Measure(shape, placement, target, moisture, FrontFields.Surface(moisture), Two);

        Assert.InRange(report.MeanMetres, 0.0, 0.1 * Cell);
        Assert.InRange(Math.Abs(report.SignedMeanMetres), 0.0, 0.1 * Cell);
        Assert.InRange(report.Percentile95Metres, 0.0, 0.2 * Cell);
        Assert.Equal(0.0, report.DeepUnsetShare);
        Assert.Equal(0.00132, report.TargetCubicMetres, 0.01 * 0.00132);
    }

    /// <summary>
    /// 4 x 4 x 4 dry cells from 30 mm down, in a block of 24 cells a side: those 20 mm deep are a cube of 16 cells, so the share is 64 / 4096. The walls
    /// of the pocket are near the six sides of its 20 mm, and they count as pocket, not as distance.
    /// </summary>
    [Fact]
    public void Dry_pocket_30_mm_deep_is_a_deep_unset_share_and_a_pocket()
    {
        SurfaceDeviationReport report = MeasurePocket(6, 4), whole = MeasurePocket(6, 0);

        Assert.Equal(64.0 / 4096.0, report.DeepUnsetShare, 1e-9);
        Assert.InRange(report.PocketSquareMetres, 0.6 * 6 * 0.02 * 0.02, 1.4 * 6 * 0.02 * 0.02);
        Assert.Equal(whole.MeanMetres, report.MeanMetres, 0.02 * Cell);
    }

    /// <summary>Two cells of 5 mm from 10 mm down end at 20 mm: dry, enclosed, but not deep.</summary>
    [Fact]
    public void Dry_pocket_10_mm_deep_is_no_deep_unset_share()
    {
        SurfaceDeviationReport report = MeasurePocket(2, 2);

        Assert.Equal(0.0, report.DeepUnsetShare);
        Assert.True(report.PocketSquareMetres > 0.0);
    }

    /// <summary>A hollow that was wanted is no pocket and not unset.</summary>
    [Fact]
    public void Hollow_that_was_wanted_is_no_dry_pocket()
    {
        SurfaceDeviationReport report = MeasurePocket(6, 4, wantedEmpty: true);

        Assert.Equal(0.0, report.DeepUnsetShare);
        Assert.Equal(0.0, report.PocketSquareMetres);
    }

    [Fact]
    public void Dry_pockets_are_the_very_cells_left_loose_and_enclosed()
    {
        CellGrid grid = FrontFields.Grid(12, 12, 12, Cell);
        TargetField target = Samples.Target(grid, p => p.X > 0.01 && p.X < 0.05 && p.Y > 0.01 && p.Y < 0.05 && p.Z > 0.01 && p.Z < 0.05 ? 1.0 : 0.0);
        int enclosed = (6 * 12 + 6) * 12 + 6, open = (6 * 12 + 6) * 12 + 2;
        MoistureResult moisture = Samples.Moisture(grid, i => i == enclosed || i == open || target.Fraction[i] < 0.5f ? 0.0 : 0.2);

        bool[] pockets = DryPockets.Of(target, moisture, Two);

        Assert.Equal([enclosed], Enumerable.Range(0, grid.Count).Where(i => pockets[i]));
        Assert.True(DryPockets.IsAt(pockets, grid, 6.0 * Cell, 6.5 * Cell, 6.5 * Cell));
        Assert.False(DryPockets.IsAt(pockets, grid, 2.0 * Cell, 6.5 * Cell, 6.5 * Cell));
    }
}
