using CsCheck;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Numerics;

public sealed class DistanceTransformTests
{
    private static readonly Parallelism One = new(1);

    [Theory]
    [InlineData(Phase.Empty, OutsideCells.Ignored)]
    [InlineData(Phase.Empty, OutsideCells.Empty)]
    [InlineData(Phase.Set, OutsideCells.Ignored)]
    [InlineData(Phase.Set, OutsideCells.Set)]
    public void Squared_random_solids_equals_every_pair_tried(Phase to, OutsideCells outside)
    {
        // 20 random solids of 12^3 cells and of odd boxes, from nearly empty to nearly full: integers, so equal means equal.
        for (uint i = 0; i < 20; i++)
        {
            GridShape shape = i % 2 == 0 ? new GridShape(12, 12, 12) : new GridShape(1 + (int)i, 7, 1 + (int)i / 6);
            int percent = Gen.Int[1, 99].Generate(new PCG(i, 5), null, out _);
            byte[] cells = Gen.Int[0, 99].Select(n => n < percent ? (byte)1 : (byte)0).Array[shape.Count].Generate(new PCG(i, 7), null, out _);

            int[] squared = DistanceTransform.Squared(cells, shape, to, outside, One);

            Assert.Equal(EveryPair(cells, shape, to, outside), squared);
        }
    }

    [Fact]
    public void Squared_flat_cells_equals_every_pair_tried()
    {
        GridShape shape = new(9, 8, 11);
        CellSize size = new(5.0, 7.0);
        byte[] cells = Gen.Int[0, 9].Select(n => n < 9 ? (byte)1 : (byte)0).Array[shape.Count].Generate(new PCG(1, 3), null, out _);

        float[] squared = DistanceTransform.Squared(cells, shape, size, Phase.Empty, OutsideCells.Ignored, One);

        for (int i = 0; i < cells.Length; i++)
        {
            double nearest = double.PositiveInfinity;
            for (int j = 0; j < cells.Length; j++)
            {
                (int dx, int dy, int dz) = Between(shape, i, j);
                nearest = cells[j] == 0 ? Math.Min(nearest, 25.0 * (dx * dx + dy * dy) + 49.0 * dz * dz) : nearest;
            }

            // All squares and sums are whole numbers well below 2^24, so single precision holds them exactly.
            Assert.Equal(nearest, squared[i]);
        }
    }

    [Fact]
    public void Squared_cube_of_5_with_one_empty_corner_has_its_known_sum()
    {
        // Sum over 0..4 cubed of x^2 + y^2 + z^2 = 3 * 25 * 30 = 2250; the far corner is at sqrt(48) = 6.928203.
        GridShape shape = new(5, 5, 5);
        byte[] cells = Solids.Make(shape, (x, y, z) => x + y + z > 0);

        int[] squared = DistanceTransform.Squared(cells, shape, Phase.Empty, OutsideCells.Ignored, One);

        Assert.Equal(2250, squared.Sum());
        Assert.Equal(48, squared.Max());
        Assert.Equal(48, squared[shape.Index(4, 4, 4)]);
    }

    [Fact]
    public void Squared_square_of_7_with_empty_centre_has_its_known_sum()
    {
        // Sum over -3..3 squared of x^2 + y^2 = 2 * 7 * 28 = 392.
        GridShape shape = new(7, 7, 1);
        byte[] cells = Solids.Make(shape, (x, y, _) => x != 3 || y != 3);

        Assert.Equal(392, DistanceTransform.Squared(cells, shape, Phase.Empty, OutsideCells.Ignored, One).Sum());
    }

    [Fact]
    public void Squared_distances_are_sums_of_three_squares()
    {
        // Legendre's three-square theorem: no integer 4^a (8 b + 7) is one.
        (float[] field, GridShape shape) = RandomSolids.BlockWithoutBalls();

        int[] squared = DistanceTransform.Squared(RandomSolids.Cells(field), shape, Phase.Empty, OutsideCells.Ignored, One);

        foreach (int value in squared.Where(value => value > 0).Distinct())
        {
            int rest = value;
            while (rest % 4 == 0)
            {
                rest /= 4;
            }

            Assert.NotEqual(7, rest % 8);
        }
    }

    [Fact]
    public void Squared_without_such_a_cell_says_so_everywhere()
    {
        GridShape shape = new(40, 3, 2);
        byte[] full = Solids.Make(shape, (_, _, _) => true);

        Assert.All(
            DistanceTransform.Squared(full, shape, Phase.Empty, OutsideCells.Ignored, One),
            value => Assert.Equal(DistanceTransform.NoSuchCell, value));
        Assert.All(
            DistanceTransform.Squared(full, shape, CellSize.Unit, Phase.Empty, OutsideCells.Set, One),
            value => Assert.Equal(float.PositiveInfinity, value));
    }

    [Theory]
    [InlineData(0.5f)]
    [InlineData(9.0f)]
    [InlineData(40.3f)]
    public void Squared_within_a_limit_is_the_lesser_of_both(float farthest)
    {
        (float[] field, GridShape shape) = RandomSolids.Balls();
        byte[] cells = RandomSolids.Cells(field);
        CellSize size = new(1.0, 1.25);
        float[] all = DistanceTransform.Squared(cells, shape, size, Phase.Set, OutsideCells.Ignored, One);

        float[] within = DistanceTransform.SquaredWithin(cells, shape, size, farthest, Phase.Set, OutsideCells.Ignored, One);

        Assert.Equal(all.Select(value => Math.Min(value, farthest)), within);
    }

    [Fact]
    public void Squared_field_of_another_size_is_refused()
    {
        ArgumentException refusal = Assert.Throws<ArgumentException>(
            () => DistanceTransform.Squared(new byte[7], new GridShape(2, 2, 2), Phase.Empty, OutsideCells.Ignored, One));

        Assert.Contains("7 cells", refusal.Message, StringComparison.Ordinal);
    }

    private static int[] EveryPair(byte[] cells, GridShape shape, Phase to, OutsideCells outside)
    {
        int[] squared = new int[cells.Length];
        for (int i = 0; i < cells.Length; i++)
        {
            int nearest = DistanceTransform.NoSuchCell;
            for (int j = 0; j < cells.Length; j++)
            {
                if (cells[j] != 0 == (to == Phase.Set))
                {
                    (int dx, int dy, int dz) = Between(shape, i, j);
                    nearest = Math.Min(nearest, dx * dx + dy * dy + dz * dz);
                }
            }

            if (outside != OutsideCells.Ignored)
            {
                (int x, int y, int z) = Between(shape, 0, i);
                int edge = Math.Min(
                    Math.Min(Math.Min(x + 1, shape.Nx - x), Math.Min(y + 1, shape.Ny - y)), Math.Min(z + 1, shape.Nz - z));
                nearest = Math.Min(nearest, edge * edge);
            }

            squared[i] = nearest;
        }

        return squared;
    }

    private static (int Dx, int Dy, int Dz) Between(GridShape shape, int i, int j) =>
        (j % shape.Nx - i % shape.Nx, j / shape.Nx % shape.Ny - i / shape.Nx % shape.Ny, j / shape.Plane - i / shape.Plane);
}
