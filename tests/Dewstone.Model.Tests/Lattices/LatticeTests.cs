using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Model.Tests.Lattices;

public sealed class LatticeTests
{
    private static Lattice Yard(bool shifted) => new()
    {
        Columns = 22,
        Rows = 22,
        Layers = 19,
        FirstColumn = 1,
        FirstRow = 1,
        PitchMetres = 0.05,
        LayerMetres = 0.05,
        OriginXMetres = 0.025,
        OriginYMetres = 0.025,
        TipDepthMetres = 0.025,
        BinXMetres = 1.2,
        BinYMetres = 1.2,
        UnderLayers = 1,
        ShiftedLayers = shifted,
    };

    [Fact]
    public void Tip_of_a_straight_layer_lies_at_origin_plus_pitches_and_below_the_layer_top()
    {
        // Worked by hand: column 1 + 2 of the raster: 25 + 3 x 50 = 175 mm; layer 2 from below: top at 100 mm, tip 25 mm below it.
        Point3 tip = Yard(shifted: false).Tip(2, 3, 1);
        Assert.Equal(0.175, tip.X, 12);
        Assert.Equal(0.225, tip.Y, 12);
        Assert.Equal(0.075, tip.Z, 12);
    }

    [Theory]
    [InlineData(0, true)]
    [InlineData(1, false)]
    [InlineData(2, true)]
    [InlineData(3, false)]
    public void IsShifted_alternates_so_that_the_units_lowest_layer_is_straight(int layer, bool expected)
    {
        Assert.Equal(expected, Yard(shifted: true).IsShifted(layer));
        Assert.False(Yard(shifted: false).IsShifted(layer));
    }

    [Fact]
    public void IsUsable_leaves_out_shifted_positions_nearer_than_half_a_pitch_to_a_wall()
    {
        Lattice whole = Yard(shifted: true) with { Columns = 24, Rows = 24, FirstColumn = 0, FirstRow = 0 };
        Assert.True(whole.IsUsable(23, 0, 1));
        Assert.False(whole.IsUsable(23, 0, 2)); // 25 + 23 x 50 + 25 = 1200 mm: at the wall
        Assert.True(whole.IsUsable(22, 22, 2));
    }

    [Fact]
    public void Over_gives_cubic_cells_from_half_a_pitch_before_the_first_position()
    {
        CellGrid grid = CellGrid.Over(Yard(shifted: false), 8);
        Assert.Equal((176, 176, 152), (grid.Nx, grid.Ny, grid.Nz));
        Assert.Equal(0.00625, grid.CellMetres, 15);
        Assert.Equal(grid.CellMetres, grid.CellHeightMetres, 15);
        Assert.Equal(new Point3(0.05, 0.05, 0.0), new Point3(Math.Round(grid.Origin.X, 12), Math.Round(grid.Origin.Y, 12), grid.Origin.Z));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(33)]
    public void Over_refuses_cells_out_of_range(int cells) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CellGrid.Over(Yard(shifted: false), cells));

    [Fact]
    public void Over_refuses_an_odd_number_of_cells_for_shifted_layers() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CellGrid.Over(Yard(shifted: true), 7));
}
