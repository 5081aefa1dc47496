using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Tests.Numerics;

public sealed class TriangleDistanceTests
{
    /// <summary>The triangle (0,0,0) (4,0,0) (0,3,0): squares of the distances by hand, one or more in each of its seven regions.</summary>
    [Theory]
    [InlineData(1.0, 1.0, 2.0, 4.0)] // over the face
    [InlineData(1.0, 1.0, 0.0, 0.0)] // in it
    [InlineData(1.0, 0.5, -5.0, 25.0)] // under it
    [InlineData(2.0, -3.0, 4.0, 25.0)] // edge ab
    [InlineData(-2.0, 1.5, 1.0, 5.0)] // edge ac
    [InlineData(5.0, 5.5, 0.0, 25.0)] // edge bc: 5 along its normal (3, 4)/5 from its middle (2, 1.5)
    [InlineData(5.0, 5.5, 12.0, 169.0)] // the same, 12 above
    [InlineData(-1.0, -2.0, 2.0, 9.0)] // corner a
    [InlineData(6.0, -3.0, 6.0, 49.0)] // corner b
    [InlineData(-2.0, 9.0, 3.0, 49.0)] // corner c
    public void Squared_gives_the_distance_by_hand_in_every_region(double x, double y, double z, double expected)
    {
        float[] a = [0f, 0f, 0f], b = [4f, 0f, 0f], c = [0f, 3f, 0f];

        Assert.Equal(expected, TriangleDistance.Squared(x, y, z, a, b, c), 1e-12);
        Assert.Equal(expected, TriangleDistance.Squared(x, y, z, b, c, a), 1e-12);
        Assert.Equal(expected, TriangleDistance.Squared(x, y, z, c, b, a), 1e-12);
    }

    /// <summary>A triangle without area is the stretch or the point it has shrunk to.</summary>
    [Fact]
    public void Squared_of_a_triangle_without_area_is_that_of_its_longest_edge_or_point()
    {
        float[] a = [0f, 0f, 0f], b = [2f, 0f, 0f], c = [6f, 0f, 0f];

        Assert.Equal(9.0, TriangleDistance.Squared(4.0, 3.0, 0.0, a, b, c), 1e-12);
        Assert.Equal(25.0, TriangleDistance.Squared(9.0, 4.0, 0.0, a, b, c), 1e-12);
        Assert.Equal(49.0, TriangleDistance.Squared(2.0, 3.0, 6.0, a, a, a), 1e-12);
    }
}
