using CsCheck;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Numerics;

public sealed class BallOpeningTests
{
    private static readonly Parallelism One = new(1);

    [Theory]
    [InlineData(4, 1.00182)]
    [InlineData(6, 0.99680)]
    [InlineData(8, 0.98393)]
    [InlineData(10, 0.98828)]
    public void Open_box_is_the_rounded_box(int radius, double measured)
    {
        // A box opened by a ball is the rounded box, V = abc + 2r(ab + bc + ca) + pi r^2 (a + b + c) + 4/3 pi r^3 with a = 50 - 2r and so on
        // (Steiner's formula). An independent program with the same half cell measured the ratio given; without it: 0.94 to 0.97.
        GridShape shape = new(54, 44, 34);
        byte[] cells = Solids.Make(shape, (x, y, z) => x is >= 2 and < 52 && y is >= 2 and < 42 && z is >= 2 and < 32);
        double a = 50 - 2 * radius, b = 40 - 2 * radius, c = 30 - 2 * radius, r = radius;
        double rounded = a * b * c + 2 * r * (a * b + b * c + c * a) + Math.PI * r * r * (a + b + c) + 4.0 / 3.0 * Math.PI * r * r * r;

        double ratio = Solids.CountSet(BallOpening.Open(cells, shape, CellSize.Unit, radius, OutsideCells.Empty, One)) / rounded;

        Assert.InRange(ratio, 0.98, 1.02);
        Assert.Equal(measured, ratio, 5e-6);
    }

    [Theory]
    [InlineData(4, 1.00143)]
    [InlineData(6, 0.99832)]
    [InlineData(8, 0.99192)]
    [InlineData(10, 0.99506)]
    public void Dilate_box_follows_steiners_formula(int radius, double measured)
    {
        // V(K + rB) = V + S r + pi (a + b + c) r^2 + 4/3 pi r^3 for a box of 50 x 40 x 30. The ratio given is an independent program's.
        GridShape shape = new(74, 64, 54);
        byte[] cells = Solids.Make(shape, (x, y, z) => x is >= 12 and < 62 && y is >= 12 and < 52 && z is >= 12 and < 42);
        double r = radius;
        double grown = 60000 + 9400 * r + Math.PI * 120 * r * r + 4.0 / 3.0 * Math.PI * r * r * r;

        double ratio = Solids.CountSet(BallOpening.Dilate(cells, shape, CellSize.Unit, radius, OutsideCells.Empty, One)) / grown;

        Assert.InRange(ratio, 0.98, 1.02);
        Assert.Equal(measured, ratio, 5e-6);
    }

    [Fact]
    public void Close_right_angle_fills_the_known_area()
    {
        // A ball of radius r leaves (1 - pi/4) r^2 of a 90 degree inner edge: 21.46 per length for r = 10.
        GridShape shape = new(60, 60, 41);
        byte[] cells = Solids.Make(shape, (x, y, _) => x < 12 || y < 12);

        byte[] closed = BallOpening.Close(cells, shape, CellSize.Unit, 10.0, OutsideCells.Ignored, One);

        int plane = 20 * shape.Plane;
        int filled = Solids.CountSet(closed[plane..(plane + shape.Plane)]) - Solids.CountSet(cells[plane..(plane + shape.Plane)]);
        Assert.InRange(filled, 21.46 - 3.0, 21.46 + 3.0);
    }

    [Fact]
    public void Erode_wall_keeps_what_is_deeper_than_the_radius()
    {
        // A wall 9 cells thick: cell centres lie 0.5 to 4.5 deep, so radius 2 keeps those at 2.5, 3.5, 4.5: 5 of 9 planes.
        GridShape shape = new(13, 5, 5);
        byte[] cells = Solids.Make(shape, (x, _, _) => x is >= 2 and < 11);

        Assert.Equal(5 * 25, Solids.CountSet(BallOpening.Erode(cells, shape, CellSize.Unit, 2.0, OutsideCells.Ignored, One)));
    }

    [Theory]
    [InlineData(OutsideCells.Ignored)]
    [InlineData(OutsideCells.Empty)]
    [InlineData(OutsideCells.Set)]
    public void Open_and_close_random_solids_stay_within_bounds_and_repeat_without_change(OutsideCells outside)
    {
        for (uint i = 0; i < 6; i++)
        {
            (float[] field, GridShape shape) = i % 2 == 0 ? RandomSolids.Balls() : RandomSolids.BlockWithoutBalls();
            byte[] cells = RandomSolids.Cells(field);
            double radius = Gen.Double[0.6, 5.0].Generate(new PCG(i, 1), null, out _);
            CellSize size = new(1.0, Gen.Double[0.8, 1.25].Generate(new PCG(i, 2), null, out _));

            byte[] opened = BallOpening.Open(cells, shape, size, radius, outside, One);
            byte[] closed = BallOpening.Close(cells, shape, size, radius, outside, One);

            Assert.DoesNotContain(opened.Zip(cells), pair => pair.First > pair.Second);
            Assert.DoesNotContain(closed.Zip(cells), pair => pair.First < pair.Second);
            Assert.Equal(opened, BallOpening.Open(opened, shape, size, radius, outside, One));
            Assert.Equal(closed, BallOpening.Close(closed, shape, size, radius, outside, One));
        }
    }

    [Fact]
    public void Dilate_one_cell_covers_the_lattice_points_of_a_ball()
    {
        // Lattice points within r of the origin, r = 1..10 (Gauss's sphere problem): a reach of r here is a ball of radius r - 1/2.
        int[] points = [7, 33, 123, 257, 515, 925, 1419, 2109, 3071, 4169];
        GridShape shape = new(23, 23, 23);
        byte[] cells = Solids.Make(shape, (x, y, z) => (x, y, z) == (11, 11, 11));

        for (int r = 1; r <= points.Length; r++)
        {
            Assert.Equal(points[r - 1], Solids.CountSet(BallOpening.Dilate(cells, shape, CellSize.Unit, r - 0.5, OutsideCells.Empty, One)));
        }
    }

    [Fact]
    public void Erode_negative_radius_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(
            () => BallOpening.Erode([1], new GridShape(1, 1, 1), CellSize.Unit, -1.0, OutsideCells.Empty, One));
}
