using CsCheck;
using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Tests.Numerics;

public sealed class PercolatingWidthTests
{
    [Theory]
    [InlineData(1, 1.0)]
    [InlineData(5, 5.0)]
    [InlineData(9, 9.0)]
    [InlineData(13, 13.0)]
    [InlineData(4, 3.0)]
    [InlineData(10, 9.0)]
    public void Between_square_channel_is_its_width_or_one_cell_less_when_even(int width, double expected)
    {
        GridShape shape = new(20, 17, 19);
        byte[] cells = Solids.Make(shape, (_, y, z) => y < 2 || y >= 2 + width || z < 3 || z >= 3 + width);

        Assert.Equal(expected, WidthAlongX(cells, shape, CellSize.Unit), 6);
    }

    [Theory]
    [InlineData(3.0)]
    [InlineData(5.5)]
    [InlineData(8.3)]
    [InlineData(12.0)]
    public void Between_round_channel_is_its_diameter_within_a_cell(double radius)
    {
        GridShape shape = new(16, 31, 31);
        byte[] cells = Solids.Make(shape, (_, y, z) => (y - 15) * (y - 15) + (z - 15) * (z - 15) > radius * radius);

        Assert.InRange(WidthAlongX(cells, shape, CellSize.Unit), 2 * radius - 1.0, 2 * radius + 1.0);
    }

    [Theory]
    [InlineData(Connectivity.FacesEdgesCorners)]
    [InlineData(Connectivity.Faces)]
    public void Between_slanting_round_channels_are_their_diameter_less_at_most_the_way_to_a_cell_centre(Connectivity steps)
    {
        // Channels of radius 7 along 30 random directions, from x = 0 to the other side. A cell's centre can be sqrt(3)/2 off the axis, which
        // costs sqrt(3) of the width; the wall's own cells stand up to half a cell off the true wall.
        GridShape shape = new(48, 48, 48);
        for (uint i = 0; i < 30; i++)
        {
            double[] draw = Gen.Double[0.0, 1.0].Array[4].Generate(new PCG(i, 9), null, out _);
            (double uy, double uz) = (draw[0] * 0.4, draw[1] * 0.4);
            double length = Math.Sqrt(1.0 + uy * uy + uz * uz);
            byte[] cells = Solids.Make(shape, (x, y, z) =>
            {
                double px = x, py = y - 12.0 - draw[2], pz = z - 12.0 - draw[3];
                double along = (px + py * uy + pz * uz) / length;
                return px * px + py * py + pz * pz - along * along > 49.0;
            });

            Assert.InRange(WidthAlongX(cells, shape, CellSize.Unit, steps), 14.0 - Math.Sqrt(3.0) - 0.5, 14.0 + 0.5);
        }
    }

    [Fact]
    public void Between_throat_sets_the_width_and_is_found()
    {
        // A 15-cell square channel with one plate at x = 12 that leaves a 7-cell square opening.
        GridShape shape = new(25, 21, 21);
        byte[] cells = Solids.Make(shape, (x, y, z) =>
            x == 12 ? y < 7 || y >= 14 || z < 7 || z >= 14 : y < 3 || y >= 18 || z < 3 || z >= 18);

        Passage? passage = Between(cells, shape, CellSize.Unit, Connectivity.FacesEdgesCorners);

        Assert.Equal(7.0, passage!.Value.Width, 6);
        Assert.Equal(shape.Index(12, 10, 10), passage.Value.NarrowestCell);
    }

    [Fact]
    public void Between_two_ways_takes_the_wider()
    {
        GridShape shape = new(12, 30, 15);
        byte[] cells = Solids.Make(shape, (_, y, z) =>
            !(y is >= 2 and < 7 && z is >= 2 and < 7) && !(y is >= 14 and < 25 && z is >= 2 and < 13));

        Assert.Equal(11.0, WidthAlongX(cells, shape, CellSize.Unit), 6);
    }

    [Theory]
    [InlineData(5.0, 4.0)]
    [InlineData(4.0, 5.0)]
    public void Between_flat_or_tall_cells_never_overstates_a_slot(double width, double height)
    {
        // A slot 9 cells wide along y and 31 high: 9 widths, less at most the difference of the edges.
        GridShape shape = new(10, 13, 35);
        byte[] cells = Solids.Make(shape, (_, y, z) => y < 2 || y >= 11 || z < 2 || z >= 33);

        double found = WidthAlongX(cells, shape, new CellSize(width, height));

        Assert.InRange(found, 9 * width - Math.Max(0.0, height - width), 9 * width);
    }

    [Fact]
    public void Between_closed_wall_finds_no_way()
    {
        GridShape shape = new(9, 7, 7);
        byte[] cells = Solids.Make(shape, (x, _, _) => x == 4);

        Assert.Null(Between(cells, shape, CellSize.Unit, Connectivity.FacesEdgesCorners));
    }

    [Fact]
    public void Between_given_clearances_uses_them_as_they_are()
    {
        // Two ways past a wall: clearances 0.4 and 0.7; the ends have more.
        GridShape shape = new(3, 3, 1);
        float[] clearances = [2f, 0.4f, 2f, 2f, 0f, 2f, 2f, 0.7f, 2f];
        byte[] regions = [PercolatingWidth.From, 0, PercolatingWidth.To, 0, 0, 0, 0, 0, 0];

        Passage? passage = PercolatingWidth.Between(clearances, shape, regions, Connectivity.Faces);

        Assert.Equal(new Passage(2.0 * 0.7f, 7), passage);
    }

    [Fact]
    public void Order_of_random_values_is_a_stable_sort()
    {
        (float[] field, _) = RandomSolids.Noise();
        float[] coarse = [.. field.Select(value => MathF.Floor(value * 20f) / 3f)];

        int[] expected = [.. Enumerable.Range(0, coarse.Length).Where(i => coarse[i] > 0f).OrderByDescending(i => coarse[i])];

        Assert.Equal(expected, DescendingOrder.OfPositive(coarse));
    }

    private static double WidthAlongX(
        byte[] cells, GridShape shape, CellSize size, Connectivity steps = Connectivity.FacesEdgesCorners) =>
        Between(cells, shape, size, steps)!.Value.Width;

    private static Passage? Between(byte[] cells, GridShape shape, CellSize size, Connectivity steps)
    {
        byte[] regions = Solids.Make(shape, (x, _, _) => x == 0);
        for (int i = shape.Nx - 1; i < regions.Length; i += shape.Nx)
        {
            regions[i] = PercolatingWidth.To;
        }

        return PercolatingWidth.Between(Solids.Clearances(cells, shape, size, Phase.Empty), shape, regions, steps);
    }
}
