using Dewstone.Compute.Habitat;
using Dewstone.Compute.Numerics;
using Dewstone.Compute.Tests.Numerics;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Tests.Habitat;

public sealed class SurfaceFiguresTests
{
    /// <summary>Menger sponge of level 4: 160000, 8000, 400 and 20 boxes of 1, 3, 9 and 27 cells; dimension log 20 / log 3 = 2.726833 (Menger; recomputed).</summary>
    [Fact]
    public void Menger_sponge_has_its_dimension()
    {
        (byte[] cells, GridShape shape) = Solids.Menger(4);

        Assert.Equal([160000, 8000, 400, 20], new[] { 1, 3, 9, 27 }.Select(box => BoxCounting.Count(cells, shape, box)));
        Assert.Equal(Math.Log(20.0) / Math.Log(3.0), BoxCounting.Dimension(cells, shape, [1, 3, 9, 27]), 1e-9);
    }

    [Fact]
    public void Plane_and_block_have_dimensions_two_and_three()
    {
        GridShape shape = new(64, 64, 64);

        Assert.Equal(2.0, BoxCounting.Dimension(Solids.Make(shape, (_, _, z) => z == 5), shape, [1, 2, 4, 8, 16]), 1e-12);
        Assert.Equal(3.0, BoxCounting.Dimension(Solids.Make(shape, (_, _, _) => true), shape, [1, 2, 4, 8, 16]), 1e-12);
        Assert.Equal(0.0, BoxCounting.Dimension(new byte[64], new GridShape(4, 4, 4), [1, 2]));
    }

    /// <summary>The surface of a finite ball of cells gives 1.87 to 1.92, not 2.00 (own numerics of the reference pages, ball of 64 cells: 1.916).</summary>
    [Fact]
    public void Finite_ball_has_less_than_dimension_two()
    {
        GridShape shape = new(64, 64, 64);
        byte[] ball = Solids.Make(shape, (x, y, z) => R(x) + R(y) + R(z) <= 31.5 * 31.5);
        byte[] shell = Solids.Make(shape, (x, y, z) => ball[shape.Index(x, y, z)] != 0 && (Out(x - 1, y, z) || Out(x + 1, y, z) || Out(x, y - 1, z) || Out(x, y + 1, z) || Out(x, y, z - 1) || Out(x, y, z + 1)));
        double dimension = BoxCounting.Dimension(shell, shape, [1, 2, 4, 8, 16]);

        Assert.InRange(dimension, 1.87, 1.93);
        Assert.NotEqual(2.0, dimension, 0.05);

        static double R(int v) => (v - 31.5) * (v - 31.5);
        bool Out(int x, int y, int z) => x < 0 || y < 0 || z < 0 || x > 63 || y > 63 || z > 63 || ball[shape.Index(x, y, z)] == 0;
    }

    /// <summary>A ball: 4 pi R^2, closed so vector ruggedness 1; (1 - cos 45) / 2 = 0.1464 of it faces up, as much down. Its upper half alone: ruggedness 1/2.</summary>
    [Fact]
    public void Ball_and_half_ball_equal_the_closed_form()
    {
        GridShape shape = new(64, 64, 64);
        SurfaceMesh mesh = IsoSurface.At(Solids.BallField(shape, 32, 32, 32, 25), shape, CellSize.Unit, 0f, Waters.Two);
        SurfaceShape whole = SurfaceShape.Of(mesh, double.NegativeInfinity);

        Assert.Equal(1.0, whole.SquareMetres / (4.0 * Math.PI * 625.0), 0.005);
        Assert.Equal(1.0, whole.VectorRuggedness, 1e-3);
        Assert.Equal(0.1464, whole.ShareUp, 0.01);
        Assert.Equal(0.1464, whole.ShareDown, 0.01);

        // The same ball sunk by half: the flat underside stands on the seabed and is left out, so the half ball has area 2 pi R^2 and ruggedness 1/2.
        GridShape half = new(64, 64, 32);
        float[] upper = Solids.BallField(shape, 32, 32, 32, 25).AsSpan(32 * shape.Plane).ToArray();
        SurfaceShape dome = SurfaceShape.Of(IsoSurface.At(upper, half, CellSize.Unit, 0f, Waters.Two), 0.5);
        Assert.Equal(1.0, dome.SquareMetres / (2.0 * Math.PI * 625.0), 0.01);
        Assert.Equal(0.5, dome.VectorRuggedness, 0.01);
    }

    /// <summary>A cube on the seabed: five faces, one of them up. A surface between cells cuts sharp edges, by half as much on half the cells: extrapolated to nothing.</summary>
    [Fact]
    public void Cube_on_the_seabed_has_five_faces()
    {
        SurfaceShape coarse = Measured(0.02), cube = Measured(0.01);

        Assert.Equal(1.0, (2.0 * cube.SquareMetres - coarse.SquareMetres) / (5 * 0.16), 0.005);
        Assert.Equal(0.2, cube.ShareUp, 0.01);
        Assert.Equal(0.0, cube.ShareDown, 0.01);
        Assert.Equal(0.8, cube.VectorRuggedness, 0.01);

        static SurfaceShape Measured(double cell)
        {
            WaterField field = Waters.Field(new Size3(0.4, 0.4, 0.4), cell, p => Waters.Block(p, new Point3(0, 0, 0), new Point3(0.4, 0.4, 0.4)), 0.1);
            return SurfaceShape.Of(
                IsoSurface.At(field.Values, field.Shape, field.Size, WaterField.Level, Waters.Two), field.BedPlanes * field.Size.Height + 0.05);
        }
    }

    /// <summary>Beside a wide wall on the level: half the sky, but for what is above the wall; from its top all; from the bottom of a shaft of radius r and depth h 1 - h / sqrt(h^2 + r^2).</summary>
    [Fact]
    public void Open_sky_equals_the_closed_form()
    {
        Size3 box = new(0.6, 0.6, 0.4);
        WaterField field = Waters.Field(
            box, 0.01, p => Math.Max(Waters.Block(p, new Point3(0, 0, 0), new Point3(0.6, 0.6, 0.4)), Shaft(p)), 0.05);
        float[] clear = SurfaceDistance.Of(field.OnSeabed(), field.Shape, field.Size, WaterField.Level, 0.5, Waters.Two);
        int first = Array.FindIndex(field.InBoxX, share => share > 0.5), foot = Array.FindIndex(field.InBoxZ, share => share > 0.5);

        // Shaft of 0.2 m across, 0.2 m deep: its bottom's water cell lies 5 mm above the bottom.
        int bottom = field.Shape.Index(first + 30, first + 30, foot + 20);
        double depth = 0.2 - 0.005;
        Assert.Equal(1.0 - depth / Math.Sqrt(depth * depth + 0.01), OpenSky.From(field, clear, bottom), 0.03);
        Assert.Equal(1.0, OpenSky.From(field, clear, field.Shape.Index(first + 5, first + 5, foot + 40)), 1e-12);
        Assert.Equal(0.5, OpenSky.From(field, clear, field.Shape.Index(first - 1, first + 30, foot + 2)), 0.07);

        static double Shaft(Point3 p) => Math.Min(0.1 - Math.Sqrt((p.X - 0.3) * (p.X - 0.3) + (p.Y - 0.3) * (p.Y - 0.3)), p.Z - 0.2);
    }
}
