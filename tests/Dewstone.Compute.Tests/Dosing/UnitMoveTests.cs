using Dewstone.Compute.Dosing;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Tests.Dosing;

public sealed class UnitMoveTests
{
    /// <remarks>
    /// A turn about the vertical and a move are rigid: a needle's tip must have the same coordinates in the unit's own frame before and after, straight and shifted,
    /// whatever the box. That is the whole proof that the half-pitch shift maps to itself modulo whole pitches.
    /// </remarks>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Tips_keep_their_place_in_the_unit_for_every_turn(int turns)
    {
        Lattice bin = Bin();
        // A box of 330 mm by 180 mm with its corner 12.5 mm and 37.5 mm inside its first voxel, solved turned by 90 degrees.
        UnitPlacement solved = new() { QuarterTurns = 1, Corner = new Point3(0.2125, 0.3375, 0.075), UnitBox = new Size3(0.33, 0.18, 0.2), ShiftedLayers = true };
        Footprint footprint = Footprint.Of(Samples.YardPrinter(), solved);
        Assert.Equal(new Footprint(4, 6, 4, 8), footprint);
        UnitMove move = new(footprint, turns, 11, 3);
        UnitPlacement stands = move.Placement(Samples.YardPrinter(), solved);

        Assert.Equal(move.To, Footprint.Of(Samples.YardPrinter(), stands));
        for (int k = 1; k <= 2; k++)
        {
            Assert.Equal(k == 2, bin.IsShifted(k));
            for (int row = 4; row < 16; row++)
            {
                for (int column = 2; column < 10; column++)
                {
                    (int i, int j) = move.Position(column, row, bin.IsShifted(k));
                    Point3 apart = stands.ToUnit(bin.Tip(i, j, k)) - solved.ToUnit(bin.Tip(column, row, k));
                    Assert.InRange(apart.Norm, 0.0, 1e-12);
                }
            }
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Cells_keep_their_place_in_the_unit_for_every_turn(int turns)
    {
        CellGrid cells = CellGrid.Over(Bin(), 4);
        UnitPlacement solved = new() { QuarterTurns = 0, Corner = new Point3(0.2, 0.3, 0.05), UnitBox = new Size3(0.33, 0.18, 0.2) };
        UnitMove move = new(Footprint.Of(Samples.YardPrinter(), solved), turns, 9, 5);
        UnitPlacement stands = move.Placement(Samples.YardPrinter(), solved);
        for (int y = 0; y < cells.Ny; y += 3)
        {
            for (int x = 0; x < cells.Nx; x += 5)
            {
                (int a, int b) = move.CellBefore(x, y, 4);
                Point3 apart = stands.ToUnit(cells.Centre(x, y, 0)) - solved.ToUnit(cells.Centre(a, b, 0));
                Assert.InRange(apart.Norm, 0.0, 1e-12);
            }
        }
    }

    [Theory]
    [InlineData(0.1, 0.1, 2, 2)]
    [InlineData(0.1, 0.100001, 2, 3)]
    [InlineData(0.125, 0.05, 2, 2)]
    public void Footprint_counts_every_voxel_the_box_touches(double corner, double length, int column, int columns)
    {
        UnitPlacement placement = new() { QuarterTurns = 0, Corner = new Point3(corner, 0.0, 0.05), UnitBox = new Size3(length, 0.05, 0.05) };

        Assert.Equal(new Footprint(column, 0, columns, 1), Footprint.Of(Samples.YardPrinter(), placement));
    }

    private static Lattice Bin() => new()
    {
        Columns = 24,
        Rows = 24,
        Layers = 5,
        FirstColumn = 0,
        FirstRow = 0,
        PitchMetres = 0.05,
        LayerMetres = 0.05,
        OriginXMetres = 0.025,
        OriginYMetres = 0.025,
        TipDepthMetres = 0.025,
        BinXMetres = 1.2,
        BinYMetres = 1.2,
        UnderLayers = 1,
        ShiftedLayers = true,
    };
}
