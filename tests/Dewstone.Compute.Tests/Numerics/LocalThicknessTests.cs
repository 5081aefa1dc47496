using CsCheck;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Numerics;

/// <summary>Local thickness against bodies whose answer is a closed form, and against laying every ball (Hildebrand and Rüegsegger 1997; from memory).</summary>
public sealed class LocalThicknessTests
{
    private static readonly Parallelism Two = new(2);

    private static (float[] Thickness, float[] Distances) Of(GridShape shape, Func<double, double, double, double> inside, int threads = 2)
    {
        float[] field = new float[shape.Count];
        for (int i = 0; i < field.Length; i++)
        {
            field[i] = (float)inside(i % shape.Nx + 0.5, i / shape.Nx % shape.Ny + 0.5, i / shape.Plane + 0.5);
        }

        float[] distances = SurfaceDistance.Of(field, shape, CellSize.Unit, 0f, 100.0, Two);
        return (LocalThickness.Of(distances, shape, CellSize.Unit, new Parallelism(threads)), distances);
    }

    /// <summary>A slab of thickness t has thickness t everywhere, wherever it lies between the cells; cells within a tenth of its faces may miss the ball.</summary>
    [Theory]
    [InlineData(9.6, 20.0)]
    [InlineData(9.6, 20.5)]
    [InlineData(9.6, 20.27)]
    [InlineData(6.0, 20.0)]
    [InlineData(3.3, 20.4)]
    public void Slab_along_the_axes_has_its_thickness(double thickness, double middle)
    {
        GridShape shape = new(40, 30, 30);
        (float[] found, float[] distances) = Of(shape, (x, _, _) => thickness / 2.0 - Math.Abs(x - middle));

        for (int cell = 0; cell < found.Length; cell++)
        {
            bool edge = cell / shape.Nx % shape.Ny is < 6 or > 23 || cell / shape.Plane is < 6 or > 23;
            if (distances[cell] < -0.1f && !edge)
            {
                Assert.Equal(thickness, found[cell], 0.05);
            }
        }
    }

    /// <summary>Slabs of 9.6 cells in 30 random directions: at their middles they read within a quarter of a cell.</summary>
    [Fact]
    public void Slanting_slab_has_its_thickness_within_a_quarter_of_a_cell()
    {
        GridShape shape = new(44, 44, 44);
        double worst = 0.0;
        for (uint i = 0; i < 30; i++)
        {
            double[] draw = Gen.Double[-1.0, 1.0].Array[4].Generate(new PCG(i, 5), null, out _);
            double length = Math.Sqrt(draw[0] * draw[0] + draw[1] * draw[1] + draw[2] * draw[2]);
            (float[] found, _) = Of(
                shape, (x, y, z) => 4.8 - Math.Abs(((x - 22) * draw[0] + (y - 22) * draw[1] + (z - 22) * draw[2]) / length - draw[3]));
            for (int z = 18; z < 26; z++)
            {
                for (int y = 18; y < 26; y++)
                {
                    for (int x = 18; x < 26; x++)
                    {
                        double beside = Math.Abs(((x - 21.5) * draw[0] + (y - 21.5) * draw[1] + (z - 21.5) * draw[2]) / length - draw[3]);
                        worst = beside < 4.0 ? Math.Max(worst, Math.Abs(found[shape.Index(x, y, z)] - 9.6)) : worst;
                    }
                }
            }
        }

        Assert.InRange(worst, 0.0, 0.25);
    }

    /// <summary>A long bar of radius r has thickness 2 r, a ball too.</summary>
    [Theory]
    [InlineData(7.3, 20.0, 20.0)]
    [InlineData(7.3, 20.5, 20.5)]
    [InlineData(7.3, 20.2, 20.4)]
    public void Round_bar_has_its_diameter(double radius, double middleY, double middleZ)
    {
        GridShape shape = new(40, 41, 41);
        (float[] found, float[] distances) = Of(
            shape, (_, y, z) => radius - Math.Sqrt((y - middleY) * (y - middleY) + (z - middleZ) * (z - middleZ)));

        for (int cell = 0; cell < found.Length; cell++)
        {
            if (distances[cell] < -0.5f && cell % shape.Nx is > 12 and < 28)
            {
                Assert.Equal(2.0 * radius, found[cell], 0.3);
            }
        }
    }

    [Fact]
    public void Ball_has_its_diameter()
    {
        GridShape shape = new(36, 36, 36);
        (float[] found, float[] distances) = Of(
            shape, (x, y, z) => 12.4 - Math.Sqrt((x - 18.3) * (x - 18.3) + (y - 17.6) * (y - 17.6) + (z - 18.1) * (z - 18.1)));

        for (int cell = 0; cell < found.Length; cell++)
        {
            if (distances[cell] < -0.5f)
            {
                Assert.Equal(24.8, found[cell], 0.3);
            }
        }
    }

    /// <summary>
    /// Every ball of every cell laid over every cell: the ridge balls are never smaller than the largest of these but for rims, and never larger than balls grown
    /// by the way from a cell's centre to its corner.
    /// </summary>
    [Fact]
    public void Seeded_solid_agrees_with_laying_every_ball()
    {
        (float[] field, GridShape shape) = RandomSolids.BlockWithoutBalls();
        float[] distances = SurfaceDistance.Of(field, shape, CellSize.Unit, 0f, 100.0, Two);
        float[] found = LocalThickness.Of(distances, shape, CellSize.Unit, Two);
        float[] every = EveryBall(distances, shape, 0f), grown = EveryBall(distances, shape, 0.8661f);
        int set = 0, low = 0;
        for (int cell = 0; cell < found.Length; cell++)
        {
            Assert.InRange(found[cell], 0f, grown[cell]);
            set += every[cell] > 0f ? 1 : 0;
            low += found[cell] < every[cell] - 0.25f ? 1 : 0;
        }

        Assert.InRange((double)low / set, 0.0, 0.02);
    }

    [Fact]
    public void Thickness_does_not_depend_on_the_threads()
    {
        (float[] field, GridShape shape) = RandomSolids.Balls();

        float[] one = Of(shape, (x, y, z) => field[shape.Index((int)x, (int)y, (int)z)], 1).Thickness;

        Assert.Equal(one, Of(shape, (x, y, z) => field[shape.Index((int)x, (int)y, (int)z)], 3).Thickness);
    }

    private static float[] EveryBall(float[] distances, GridShape shape, float more)
    {
        float[] every = new float[distances.Length];
        for (int centre = 0; centre < distances.Length; centre++)
        {
            float radius = distances[centre] < 0f ? more - distances[centre] : 0f;
            int reach = (int)Math.Max(0f, radius);
            int cx = centre % shape.Nx, cy = centre / shape.Nx % shape.Ny, cz = centre / shape.Plane;
            for (int z = Math.Max(0, cz - reach); radius > 0f && z <= Math.Min(shape.Nz - 1, cz + reach); z++)
            {
                for (int y = Math.Max(0, cy - reach); y <= Math.Min(shape.Ny - 1, cy + reach); y++)
                {
                    for (int x = Math.Max(0, cx - reach); x <= Math.Min(shape.Nx - 1, cx + reach); x++)
                    {
                        int cell = shape.Index(x, y, z);
                        bool covers = (x - cx) * (x - cx) + (y - cy) * (y - cy) + (z - cz) * (z - cz) <= radius * radius;
                        every[cell] = covers && distances[cell] < 0f ? Math.Max(every[cell], 2f * radius) : every[cell];
                    }
                }
            }
        }

        return every;
    }
}
