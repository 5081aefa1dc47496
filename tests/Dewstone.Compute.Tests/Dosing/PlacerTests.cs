using Dewstone.Compute.Dosing;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Tests.Dosing;

public sealed class PlacerTests
{
    [Fact]
    public void Block_stands_in_the_middle_on_voxel_faces_above_the_loose_layer()
    {
        PlacementResult result = Placer.Place(Samples.Job(), 8);

        Assert.Empty(result.Findings);
        Assert.Equal(0, result.Placement!.QuarterTurns);
        Assert.Equal(new Point3(0.15, 0.15, 0.05), result.Placement.Corner);
        Lattice lattice = result.Lattice!;
        // 18 positions, two pitches of margin on each side; one loose layer and 18.
        Assert.Equal((22, 22, 19), (lattice.Columns, lattice.Rows, lattice.Layers));
        Assert.Equal((1, 1), (lattice.FirstColumn, lattice.FirstRow));
        Assert.Equal(0.175, lattice.Tip(2, 2, 1).X, 12);
        Assert.Equal((176, 176, 152), (result.Cells!.Nx, result.Cells.Ny, result.Cells.Nz));
    }

    [Fact]
    public void Box_that_is_no_whole_number_of_pitches_keeps_its_lower_corner_on_a_voxel_face()
    {
        PlacementResult result = Placer.Place(Samples.Job(Samples.Box(0.33, 0.38, 0.12)), 4);

        // (1200 - 330)/2 = 435 mm lies nearest to 450 mm, (1200 - 380)/2 = 410 mm to 400 mm; 0.12 m needs three layers.
        Assert.Equal(new Point3(0.45, 0.40, 0.05), result.Placement!.Corner);
        Assert.Equal((7 + 4, 8 + 4, 4), (result.Lattice!.Columns, result.Lattice.Rows, result.Lattice.Layers));
    }

    [Fact]
    public void Pitch_in_inches_is_held_exactly()
    {
        Printer yard = Samples.YardPrinter();
        Printer inches = yard with
        {
            Bin = new Bin(new Length(24 * 0.0508), new Length(24 * 0.0508), new Length(1.1)),
            Grid = yard.Grid with { Pitch = new Length(0.0508), LayerHeight = new Length(0.0508), OriginX = new Length(0.0254), OriginY = new Length(0.0254) },
        };

        PlacementResult result = Placer.Place(Samples.Job(Samples.Box(18 * 0.0508, 18 * 0.0508, 18 * 0.0508), printer: inches), 8);

        Assert.Empty(result.Findings);
        Assert.Equal((22, 22, 19), (result.Lattice!.Columns, result.Lattice.Rows, result.Lattice.Layers));
        Assert.Equal(0.0508, result.Lattice.PitchMetres);
        Assert.Equal(3 * 0.0508, result.Placement!.Corner.X, 12);
    }

    [Fact]
    public void Window_is_clipped_to_the_positions_of_the_bin()
    {
        PlacementResult result = Placer.Place(Samples.Job(Samples.Box(1.15, 1.2, 0.1)), 2);

        Assert.Equal((24, 24, 0, 0), (result.Lattice!.Columns, result.Lattice.Rows, result.Lattice.FirstColumn, result.Lattice.FirstRow));
    }

    [Theory]
    [InlineData(0, 0.6, 0.3)]
    [InlineData(1, 0.3, 0.6)]
    [InlineData(2, 0.6, 0.3)]
    [InlineData(3, 0.3, 0.6)]
    public void Turned_unit_swaps_its_sides(int turns, double alongX, double alongY)
    {
        ReefUnit unit = Samples.Box(0.6, 0.3, 0.1) with { Place = new PlacementWish { QuarterTurns = turns } };

        PlacementResult result = Placer.Place(Samples.Job(unit), 2);

        Assert.Equal(turns, result.Placement!.QuarterTurns);
        Assert.Equal((int)(alongX / 0.05 + 4.5), result.Lattice!.Columns);
        Assert.Equal((int)(alongY / 0.05 + 4.5), result.Lattice.Rows);
        Assert.Equal((1.2 - alongX) / 2, result.Placement.Corner.X, 12);
    }

    [Fact]
    public void Shift_moves_the_unit_and_lifts_it_within_a_layer()
    {
        ReefUnit unit = Samples.Box(0.3, 0.3, 0.1) with { Place = new PlacementWish { Shift = new Point3(0.0125, -0.05, 0.02) } };

        PlacementResult result = Placer.Place(Samples.Job(unit), 2);

        Assert.Equal(0.4625, result.Placement!.Corner.X, 12);
        Assert.Equal(0.40, result.Placement.Corner.Y, 12);
        Assert.Equal(0.07, result.Placement.Corner.Z, 12);
        // 0.07 + 0.10 m reach into the fourth layer; along x the unit touches seven voxels.
        Assert.Equal((7 + 4, 6 + 4, 4), (result.Lattice!.Columns, result.Lattice.Rows, result.Lattice.Layers));
    }

    [Fact]
    public void Unit_box_lies_within_the_window_for_any_size_and_shift_that_fits()
    {
        for (int size = 40; size <= 1100; size += 53)
        {
            for (int shift = -40; shift <= 40; shift += 17)
            {
                ReefUnit unit = Samples.Box(size / 1000.0, 0.2, 0.2) with { Place = new PlacementWish { Shift = new Point3(shift / 1000.0, 0, 0) } };
                PlacementResult result = Placer.Place(Samples.Job(unit), 2);
                if (result.Cells is not { } cells)
                {
                    Assert.True(size > 1050);
                    continue;
                }

                double corner = result.Placement!.Corner.X;
                Assert.True(corner >= cells.Origin.X - 1e-9 && corner + size / 1000.0 <= cells.Origin.X + cells.Nx * cells.CellMetres + 1e-9);
                Assert.InRange(Math.Abs(corner - shift / 1000.0 - (1.2 - size / 1000.0) / 2), 0.0, 0.025 + 1e-9);
            }
        }
    }
}
