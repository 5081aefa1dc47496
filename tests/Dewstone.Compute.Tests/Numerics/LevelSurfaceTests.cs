using Dewstone.Compute.Numerics;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Tests.Numerics;

public sealed class LevelSurfaceTests
{
    // A plane field 1 - x falls to 0.5 at x = 0.5 wherever the cells are: exact for a linear field.
    [Fact]
    public void Plane_is_met_where_it_is()
    {
        LevelSurface surface = Surface(10, (x, _, _) => 1.0 - x, 0.5, 1);
        Assert.Equal(0.4, surface.CrossingMetres(new Point3(0.1, 0.52, 0.37), new Point3(2, 0, 0)), 1e-6);
        Assert.Equal(0.5, surface.VolumeCubicMetres(), 1e-6);
        Assert.True(surface.Contains(new Point3(0.49, 0.5, 0.5)));
        Assert.False(surface.Contains(new Point3(0.51, 0.5, 0.5)));
    }

    [Fact]
    public void Ray_that_meets_nothing_gives_no_number() =>
        Assert.True(double.IsNaN(Surface(10, (x, _, _) => 1.0 - x, 0.5, 1).CrossingMetres(new Point3(0.1, 0.5, 0.5), new Point3(0, 1, 0))));

    // A cliff (1 - x/0.53)^(1/3) is straight in its third power.
    [Fact]
    public void Cliff_is_placed_by_its_power()
    {
        LevelSurface surface = Surface(10, (x, _, _) => Math.Cbrt(Math.Max(0.0, 1.0 - x / 0.73)), 0.5, 3);
        Assert.Equal(0.73 * (1.0 - 0.125), surface.VolumeCubicMetres(), 1e-6);
    }

    [Fact]
    public void Floor_counts_as_nothing()
    {
        LevelSurface surface = new([0.3f, 0.2f, 0.1f, 0.1f], new GridShape(4, 1, 1), CellSize.Unit, 0.15, 1, 0.1);
        Assert.Equal(2.0, surface.CrossingMetres(new Point3(0.0, 0.5, 0.5), new Point3(1, 0, 0)), 1e-6);
    }

    [Fact]
    public void Volume_of_blocks_sums_to_the_whole()
    {
        LevelSurface surface = Surface(24, (x, y, z) => 0.4 - Math.Sqrt((x - 0.5) * (x - 0.5) + (y - 0.5) * (y - 0.5) + (z - 0.5) * (z - 0.5)), 0.05, 1);
        double parts = surface.VolumeCubicMetres((0, 0, 0), (5, 24, 24)) + surface.VolumeCubicMetres((5, 0, 0), (24, 24, 24));
        Assert.Equal(surface.VolumeCubicMetres(), parts, 1e-12);
        Assert.InRange(parts / (4.0 / 3.0 * Math.PI * 0.35 * 0.35 * 0.35), 0.99, 1.01);
    }

    // A cubic grid of balls of radius r, pitch 1: share inside. Derived: up to r = 0.5 a ball; up to 1/sqrt(2) a ball less three lenses,
    // lens = 2 pi (r - 1/2)^2 (3 r - (r - 1/2))/3; above that by independent quadrature. 40 cells a pitch, 0.2 %.
    [Theory]
    [InlineData(0.45, 0.38170351)]
    [InlineData(0.50, 0.52359878)]
    [InlineData(0.55, 0.67177723)]
    [InlineData(0.60, 0.79796453)]
    [InlineData(0.65, 0.89587751)]
    [InlineData(0.75, 0.98759019)]
    [InlineData(0.80, 0.99786801)]
    public void Share_inside_a_cubic_grid_of_balls_is_known(double radius, double share)
    {
        if (radius <= Math.Sqrt(0.5))
        {
            double cap = Math.Max(0.0, radius - 0.5);
            double lenses = 3.0 * 2.0 * Math.PI * cap * cap * (3.0 * radius - cap) / 3.0;
            Assert.Equal(share, 4.0 / 3.0 * Math.PI * radius * radius * radius - lenses, 1e-8);
        }

        // One pitch around one ball; the faces of the box are mirrors, where the constant continuation is right.
        LevelSurface surface = Surface(
            40, (x, y, z) => 1.0 - Math.Sqrt((x - 0.5) * (x - 0.5) + (y - 0.5) * (y - 0.5) + (z - 0.5) * (z - 0.5)), 1.0 - radius, 1);
        Assert.InRange(surface.VolumeCubicMetres() / share, 0.998, 1.002);
    }

    private static LevelSurface Surface(int cells, Func<double, double, double, double> value, double level, int power)
    {
        float[] field = new float[cells * cells * cells];
        for (int i = 0; i < field.Length; i++)
        {
            field[i] = (float)value((i % cells + 0.5) / cells, (i / cells % cells + 0.5) / cells, (i / cells / cells + 0.5) / cells);
        }

        return new LevelSurface(field, new GridShape(cells, cells, cells), new CellSize(1.0 / cells, 1.0 / cells), level, power);
    }
}
