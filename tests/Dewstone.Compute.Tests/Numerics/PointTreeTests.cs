using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Tests.Numerics;

public sealed class PointTreeTests
{
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 9)]
    [InlineData(3, 1000)]
    [InlineData(4, 5000)]
    public void Nearest_is_that_of_trying_all(int seed, int count)
    {
        Random draws = new(seed);

        // A coarse raster of places makes many points equal in a coordinate, and some in all three.
        float[] points = [.. Enumerable.Range(0, 3 * count).Select(_ => draws.Next(20) * 0.1f)];
        PointTree tree = new(points);
        Assert.Equal(count, tree.Count);
        for (int i = 0; i < 300; i++)
        {
            double x = draws.NextDouble() * 3.0 - 0.5, y = draws.NextDouble() * 3.0 - 0.5, z = draws.NextDouble() * 3.0 - 0.5;
            double least = Enumerable.Range(0, count).Min(p => Distance(points, p, (float)x, (float)y, (float)z));
            (int point, double distance) = tree.Nearest(x, y, z);
            Assert.Equal(least, distance, 1e-12);
            Assert.Equal(least, Distance(points, point, (float)x, (float)y, (float)z), 1e-12);
            Assert.Equal(-1, tree.Nearest(x, y, z, 0.99 * least).Point);
        }
    }

    private static double Distance(float[] points, int p, float x, float y, float z)
    {
        double dx = points[3 * p] - x, dy = points[3 * p + 1] - y, dz = points[3 * p + 2] - z;
        return Math.Sqrt(dx * dx + dy * dy + dz * dz);
    }
}
