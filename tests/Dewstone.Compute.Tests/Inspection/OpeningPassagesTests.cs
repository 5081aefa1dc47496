using Dewstone.Compute.Geometry;
using Dewstone.Compute.Inspection;
using Dewstone.Compute.Tests.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Inspection;

public sealed class OpeningPassagesTests
{
    private const double Cell = 0.005;

    private static readonly Parallelism Two = new(2);

    /// <summary>A body with one tunnel along x; the hardened solid has grown by a length everywhere, a negative one for shrunk.</summary>
    private static ClearOpening Measure(Size3 box, Point3 at, Section section, double grown, bool plugged = false)
    {
        ReefUnit unit = SampleUnits.Plain(box.X, box.Y, box.Z) with { Tunnels = [SampleUnits.Straight("way", Axis.X, at, section)] };
        ReefShape shape = SampleUnits.Shape(unit);
        const int Margin = 5;
        int Cells(double metres) => (int)Math.Round(metres / Cell) + 2 * Margin;
        CellGrid grid = FrontFields.Grid(Cells(box.X), Cells(box.Y), Cells(box.Z), Cell);
        UnitPlacement placement = new() { QuarterTurns = 0, Corner = new Point3(Margin * Cell, Margin * Cell, Margin * Cell), UnitBox = box };
        TargetField target = Voxelizer.Voxelize(shape, placement, grid, Two, null, TestContext.Current.CancellationToken);
        MoistureResult moisture = FrontFields.Moisture(
            grid,
            p =>
            {
                Point3 inUnit = placement.ToUnit(p);
                double plug = plugged ? Math.Abs(inUnit.X - box.X / 2.0) - 0.02 : double.PositiveInfinity;
                return Math.Min(shape.SignedDistance(inUnit) - grown, Math.Max(plug, FrontFields.Ball(inUnit, new Point3(box.X / 2.0, at.Y, at.Z), 0.1)));
            });
        OpeningPassages passages = new(shape, placement, SolidField.Of(target, Two));
        return Assert.Single(passages.Measure(SolidField.Of(FrontFields.Surface(moisture), Two), Two)).Clear;
    }

    /// <summary>17 cells wide, its centre line through cell centres.</summary>
    [Theory]
    [InlineData(0.0)]
    [InlineData(0.006)]
    [InlineData(0.012)]
    [InlineData(-0.005)]
    public void Square_tunnel_has_its_clear_width_and_loses_twice_what_the_walls_grew(double grown)
    {
        ClearOpening way = Measure(new Size3(0.2, 0.205, 0.205), new Point3(0.0, 0.1025, 0.1025), SampleUnits.Rectangle(0.085, 0.105), grown);

        Assert.Equal("way", way.Name);
        Assert.Equal(0.085, way.WantedMetres, Cell);
        Assert.Equal(0.085 - 2.0 * grown, way.PredictedMetres, Cell);
        Assert.Equal(2.0 * grown, way.LossMetres, Cell);
    }

    /// <summary>16 cells wide, its centre line between cell centres: the ball's centre may stand between them too, and no width is lost.</summary>
    [Theory]
    [InlineData(0.0)]
    [InlineData(0.01)]
    public void Square_tunnel_between_cell_centres_has_its_clear_width_all_the_same(double grown)
    {
        ClearOpening way = Measure(new Size3(0.2, 0.2, 0.2), new Point3(0.0, 0.1, 0.1), SampleUnits.Rectangle(0.08, 0.1), grown);

        Assert.Equal(0.08, way.WantedMetres, 0.05 * Cell);
        Assert.Equal(2.0 * grown, way.LossMetres, 0.05 * Cell);
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(0.01)]
    public void Round_tunnel_has_its_diameter_and_loses_twice_what_the_walls_grew(double grown)
    {
        ClearOpening way = Measure(new Size3(0.2, 0.205, 0.205), new Point3(0.0, 0.1025, 0.1025), SampleUnits.Round(0.09), grown);

        Assert.Equal(0.09, way.WantedMetres, Cell);
        Assert.Equal(0.09 - 2.0 * grown, way.PredictedMetres, Cell);
        Assert.Equal(2.0 * grown, way.LossMetres, Cell);
    }

    /// <summary>The way through is far shorter than the way to the unit's own corner: the ends must be told apart all the same.</summary>
    [Theory]
    [InlineData(0.0)]
    [InlineData(0.008)]
    public void Tunnel_through_a_thin_wall_far_from_the_corner_is_measured_end_to_end(double grown)
    {
        ClearOpening way = Measure(new Size3(0.1, 0.3, 0.3), new Point3(0.0, 0.2025, 0.2025), SampleUnits.Round(0.06), grown);

        Assert.Equal(0.06, way.WantedMetres, Cell);
        Assert.Equal(2.0 * grown, way.LossMetres, Cell);
    }

    /// <summary>Wider than long: a mouth's far side is nearer to the other mouth than to its own corner. Closed in the middle, nothing gets through.</summary>
    [Fact]
    public void Tunnel_wider_than_long_that_is_plugged_is_closed()
    {
        ClearOpening way = Measure(new Size3(0.08, 0.305, 0.305), new Point3(0.0, 0.1525, 0.1525), SampleUnits.Rectangle(0.125, 0.125), 0.0, plugged: true);

        Assert.Equal(0.125, way.WantedMetres, Cell);
        Assert.Equal(0.0, way.PredictedMetres);
    }
}
