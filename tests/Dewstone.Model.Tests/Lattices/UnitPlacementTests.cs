using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Model.Tests.Lattices;

public sealed class UnitPlacementTests
{
    private static readonly Size3 Box = new(1.0, 0.6, 0.4);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void ToUnit_undoes_ToPrinter(int turns)
    {
        UnitPlacement placement = new() { QuarterTurns = turns, Corner = new Point3(0.1, 0.2, 0.05), UnitBox = Box };
        Point3 start = new(0.3, 0.1, 0.25);
        Point3 back = placement.ToUnit(placement.ToPrinter(start));
        Assert.True((back - start).Norm < 1e-12);
    }

    [Theory]
    [InlineData(0, 1.0, 0.0)]
    [InlineData(1, 0.6, 1.0)]
    [InlineData(2, 0.0, 0.6)]
    [InlineData(3, 0.0, 0.0)]
    public void ToPrinter_turns_counter_clockwise_seen_from_above(int turns, double x, double y)
    {
        // The corner at the east end of the south face (x = 1.0, y = 0) goes north-east, north-west, south-west by quarter turns,
        // always measured from the lower corner of the box as turned.
        UnitPlacement placement = new() { QuarterTurns = turns, Corner = default, UnitBox = Box };
        Point3 corner = placement.ToPrinter(new Point3(1.0, 0.0, 0.0));
        Assert.Equal(x, corner.X, 12);
        Assert.Equal(y, corner.Y, 12);
    }

    [Fact]
    public void TurnedBox_swaps_the_horizontal_edges_on_odd_turns()
    {
        UnitPlacement placement = new() { QuarterTurns = 3, Corner = default, UnitBox = Box };
        Assert.Equal(new Size3(0.6, 1.0, 0.4), placement.TurnedBox);
    }
}
