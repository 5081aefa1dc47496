using System.Numerics;
using Dewstone.Jobs.Emission.Pictures.Views;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Tests.Emission.Pictures.Views;

/// <summary>A ball of radius 14 cells about (24, 24, 24) in a grid of 48 x 48 x 48 cells, as a level field that falls straight through its surface.</summary>
public sealed class BodyTests
{
    private const int Side = 48;
    private const float Radius = 14f;
    private static readonly Vector3 Middle = new(24f);

    [Fact]
    public void Sight_line_meets_the_ball_where_the_quadratic_equation_says()
    {
        Body body = Ball();
        for (int i = 0; i < 400; i++)
        {
            Vector3 from = new(i % 20 * 2.4f + 0.3f, i / 20 * 2.4f + 0.1f, -40f);
            Vector3 direction = Vector3.Normalize(new Vector3(0.13f * (i % 7 - 3), 0.11f * (i % 5 - 2), 1f));
            float along = Vector3.Dot(Middle - from, direction), square = along * along - (Middle - from).LengthSquared() + Radius * Radius;

            float met = body.Meet(from, direction, float.NegativeInfinity, float.PositiveInfinity);

            if (square < -8f)
            {
                Assert.Equal(float.PositiveInfinity, met);
            }
            else if (square > 8f)
            {
                Assert.Equal(along - MathF.Sqrt(square), met, 0.15f);
            }
        }
    }

    [Fact]
    public void Normal_points_away_from_the_middle()
    {
        Body body = Ball();
        for (int i = 0; i < 50; i++)
        {
            Vector3 outward = Vector3.Normalize(new Vector3(MathF.Sin(i), MathF.Cos(1.7f * i), MathF.Sin(0.6f * i + 1f)));
            Assert.True(Vector3.Dot(outward, body.Normal(Middle + Radius * outward)) > 0.995f);
        }
    }

    [Fact]
    public void Line_that_begins_inside_meets_the_body_where_it_begins()
    {
        Assert.Equal(3f, Ball().Meet(Middle, Vector3.UnitX, 3f, float.PositiveInfinity));
    }

    [Fact]
    public void Line_that_ends_before_the_body_meets_nothing()
    {
        Assert.Equal(float.PositiveInfinity, Ball().Meet(new Vector3(24f, 24f, 0.6f), Vector3.UnitZ, 0f, 9f));
    }

    [Fact]
    public void Pieces_of_a_line_miss_nothing_that_the_whole_meets()
    {
        Body body = Ball();
        for (int i = 0; i < 200; i++)
        {
            Vector3 from = new(10f + i % 14 * 2.1f, 10f + i / 14 * 2.1f, 48f);
            Vector3 direction = Vector3.Normalize(new Vector3(0.2f, -0.3f, -1f));
            float whole = body.Meet(from, direction, 0f, float.PositiveInfinity);
            float pieces = float.PositiveInfinity;
            for (int k = 0; k < 8 && float.IsPositiveInfinity(pieces); k++)
            {
                pieces = body.Meet(from, direction, 6f * k / -direction.Z, 6f * (k + 1) / -direction.Z);
            }

            Assert.Equal(float.IsPositiveInfinity(whole), float.IsPositiveInfinity(pieces));
            Assert.True(float.IsPositiveInfinity(whole) || Math.Abs(whole - pieces) < 0.2f, $"{whole} and {pieces}");
        }
    }

    [Fact]
    public void Foot_is_the_lowest_cell_of_the_body()
    {
        Assert.InRange(Ball().Foot(), 9f, 11f);
    }

    [Fact]
    public void Open_ground_is_light_and_a_hole_is_dark()
    {
        float[] level = new float[Side * Side * Side];
        for (int i = 0; i < level.Length; i++)
        {
            int x = i % Side, y = i / Side % Side, z = i / (Side * Side);
            bool shaft = Math.Abs(x - 24) < 3 && Math.Abs(y - 24) < 3 && z > 8;
            level[i] = z < 32 && !shaft ? 1f : -1f;
        }

        Body body = new(Steps(level), Grid(), new Parallelism(2));

        Assert.True(body.Open(new Vector3(8f, 8f, 46f), Vector3.UnitZ) > 0.9f);
        Assert.True(body.Open(new Vector3(24f, 24f, 10f), Vector3.UnitZ) < 0.35f);
        Assert.Equal(1f, body.Sunlit(new Vector3(8f, 8f, 32f), Vector3.UnitZ, Vector3.Normalize(new Vector3(1f, 0f, 1f))));
        Assert.Equal(0f, body.Sunlit(new Vector3(24f, 24f, 9f), Vector3.UnitZ, Vector3.Normalize(new Vector3(1f, 0f, 1f))));
    }

    [Fact]
    public void Bricks_know_the_distance_to_the_nearest_that_holds_any_of_the_body()
    {
        Bricks bricks = Bricks.Of(Steps(Level()), Grid(), new Parallelism(2));
        (int X, int Y, int Z)[] held = [.. Places(bricks).Where(b => bricks.Distance[(b.Z * bricks.Ny + b.Y) * bricks.Nx + b.X] == 0)];

        Assert.NotEmpty(held);
        Assert.All(Places(bricks), b => Assert.Equal(
            held.Min(h => Math.Max(Math.Abs(h.X - b.X), Math.Max(Math.Abs(h.Y - b.Y), Math.Abs(h.Z - b.Z)))),
            bricks.Distance[(b.Z * bricks.Ny + b.Y) * bricks.Nx + b.X]));
    }

    private static IEnumerable<(int X, int Y, int Z)> Places(Bricks bricks) =>
        Enumerable.Range(0, bricks.Distance.Length).Select(i => (i % bricks.Nx, i / bricks.Nx % bricks.Ny, i / (bricks.Nx * bricks.Ny)));

    private static Body Ball() => new(Steps(Level()), Grid(), new Parallelism(2));

    private static CellGrid Grid() => new()
    {
        Nx = Side,
        Ny = Side,
        Nz = Side,
        CellsPerPitch = 8,
        CellsPerLayer = 8,
        Origin = new Point3(0, 0, 0),
        CellMetres = 0.00625,
        CellHeightMetres = 0.00625,
    };

    private static sbyte[] Steps(float[] level)
    {
        sbyte[] steps = new sbyte[level.Length];
        SampledField.ToSteps(level, steps);
        return steps;
    }

    private static float[] Level()
    {
        float[] level = new float[Side * Side * Side];
        for (int i = 0; i < level.Length; i++)
        {
            Vector3 centre = new(i % Side + 0.5f, i / Side % Side + 0.5f, i / (Side * Side) + 0.5f);
            level[i] = Math.Clamp((Radius - (centre - Middle).Length()) / 2f, -1f, 1f);
        }

        return level;
    }
}
