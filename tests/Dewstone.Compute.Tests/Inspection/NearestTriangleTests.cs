using Dewstone.Compute.Inspection;
using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Tests.Inspection;

public sealed class NearestTriangleTests
{
    /// <summary>Loose triangles of very different size in a flat box.</summary>
    private static SurfaceMesh RandomMesh(int seed, int count)
    {
        Random draw = new(seed);
        float[] positions = new float[9 * count];
        for (int t = 0; t < count; t++)
        {
            double reach = t % 40 == 0 ? 0.3 : 0.03;
            double x = draw.NextDouble(), y = 0.5 * draw.NextDouble(), z = 0.2 * draw.NextDouble();
            for (int corner = 0; corner < 3; corner++)
            {
                positions[9 * t + 3 * corner] = (float)(x + reach * (draw.NextDouble() - 0.5));
                positions[9 * t + 3 * corner + 1] = (float)(y + reach * (draw.NextDouble() - 0.5));
                positions[9 * t + 3 * corner + 2] = (float)(z + reach * (draw.NextDouble() - 0.5));
            }
        }

        return new SurfaceMesh { Positions = positions, Triangles = [.. Enumerable.Range(0, 3 * count)], Area = 0.0, Volume = 0.0 };
    }

    /// <summary>Points in, beside and far outside the mesh: the same bits as looking at every triangle.</summary>
    [Theory]
    [InlineData(1, 0.04)]
    [InlineData(2, 0.01)]
    [InlineData(3, 0.7)]
    public void Distance_is_exactly_that_of_looking_at_every_triangle(int seed, double bin)
    {
        SurfaceMesh mesh = RandomMesh(seed, 400);
        NearestTriangle nearest = new(mesh, bin);
        Random draw = new(seed + 100);
        for (int point = 0; point < 400; point++)
        {
            double x = 3.0 * draw.NextDouble() - 1.0, y = 2.0 * draw.NextDouble() - 0.75, z = draw.NextDouble() - 0.4;
            double least = double.PositiveInfinity;
            for (int t = 0; t < nearest.Count; t++)
            {
                least = Math.Min(
                    least,
                    TriangleDistance.Squared(
                        x, y, z, mesh.Positions.AsSpan(9 * t, 3), mesh.Positions.AsSpan(9 * t + 3, 3), mesh.Positions.AsSpan(9 * t + 6, 3)));
            }

            int found = draw.Next(nearest.Count);
            Assert.Equal(Math.Sqrt(least), nearest.Distance(x, y, z, ref found));
            Assert.Equal(Math.Sqrt(least), nearest.Distance(x, y, z, ref found, 1.01 * Math.Sqrt(least) + 1e-9));
        }
    }

    [Fact]
    public void Area_and_centre_are_those_by_hand()
    {
        SurfaceMesh mesh = new() { Positions = [0f, 0f, 1f, 3f, 0f, 1f, 0f, 3f, 4f], Triangles = [0, 1, 2], Area = 0.0, Volume = 0.0 };

        Assert.Equal((1f, 1f, 2f), mesh.Centre(0));
        Assert.Equal(4.5 * Math.Sqrt(2.0), mesh.TriangleArea(0), 1e-12);
    }

    [Fact]
    public void Distance_to_a_mesh_without_triangles_is_infinite()
    {
        SurfaceMesh mesh = new() { Positions = [], Triangles = [], Area = 0.0, Volume = 0.0 };

        int none = 0;
        Assert.Equal(double.PositiveInfinity, new NearestTriangle(mesh, 1.0).Distance(0.0, 0.0, 0.0, ref none));
    }
}
