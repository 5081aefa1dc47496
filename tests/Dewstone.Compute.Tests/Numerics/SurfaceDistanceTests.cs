using Dewstone.Compute.Numerics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Numerics;

public sealed class SurfaceDistanceTests
{
    private static readonly Parallelism Two = new(2);

    private static float[] Of((float[] Field, GridShape Shape) solid, CellSize size, int threads = 2) =>
        SurfaceDistance.Of(solid.Field, solid.Shape, size, 0f, 1e3, new Parallelism(threads));

    /// <summary>Every corner of the mesh looked at, for every cell: the same distances but for single precision.</summary>
    [Theory]
    [InlineData(1.0, 1.0)]
    [InlineData(1.0, 0.7)]
    [InlineData(0.6, 1.1)]
    public void Distance_is_that_to_the_nearest_corner_of_the_mesh(double width, double height)
    {
        (float[] field, GridShape shape) = RandomSolids.BlockWithoutBalls();
        CellSize size = new(width, height);
        float[] found = Of((field, shape), size);
        float[] corners = IsoSurface.At(field, shape, size, 0f, Two).Positions;
        for (int cell = 0; cell < field.Length; cell += 37)
        {
            double x = (cell % shape.Nx + 0.5) * width, y = (cell / shape.Nx % shape.Ny + 0.5) * width, z = (cell / shape.Plane + 0.5) * height;
            double least = double.PositiveInfinity;
            for (int c = 0; c < corners.Length; c += 3)
            {
                least = Math.Min(least, Square(x - corners[c]) + Square(y - corners[c + 1]) + Square(z - corners[c + 2]));
            }

            Assert.Equal(field[cell] >= 0f ? -Math.Sqrt(least) : Math.Sqrt(least), found[cell], 2e-4);
        }
    }

    /// <summary>
    /// Ball of radius R = 14.4: R less the way from its middle (closed form). The corners of the mesh stand at most sqrt(1/2) of a cell beside the nearest point
    /// of the ball, which makes a distance d too long by up to 1/4 (1/d + 1/R) outside and 1/4 (1/d - 1/R) inside; the ball bends by 1 / (8 R) between
    /// them, seen along an edge at most sqrt(3) times that.
    /// </summary>
    [Fact]
    public void Distance_to_a_ball_is_the_radius_less_the_way_from_its_middle()
    {
        const double Radius = 14.4;
        GridShape shape = new(50, 48, 46);
        float[] field = Solids.BallField(shape, 25.3, 24.1, 22.7, Radius);

        float[] found = Of((field, shape), CellSize.Unit);

        for (int cell = 0; cell < field.Length; cell++)
        {
            double far = Math.Abs(field[cell]), bend = field[cell] < 0f ? 1.0 / Radius : -1.0 / Radius, sag = Math.Sqrt(3.0) / (8.0 * Radius);
            if (far >= 1.0)
            {
                Assert.InRange(Math.Abs(found[cell]), far - sag, far + 0.25 * (1.0 / far + bend) + sag);
            }
        }
    }

    [Fact]
    public void Distance_does_not_depend_on_the_threads() =>
        Assert.Equal(Of(RandomSolids.Balls(), CellSize.Unit, 1), Of(RandomSolids.Balls(), CellSize.Unit, 3));

    [Fact]
    public void Distance_without_a_surface_is_the_farthest()
    {
        GridShape shape = new(5, 4, 3);
        float[] empty = new float[shape.Count];
        Array.Fill(empty, -1f);

        Assert.All(SurfaceDistance.Of(empty, shape, CellSize.Unit, 0f, 7.0, Two), distance => Assert.Equal(7f, distance));
    }

    private static double Square(double x) => x * x;
}
