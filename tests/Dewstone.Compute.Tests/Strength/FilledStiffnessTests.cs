using Dewstone.Compute.Numerics;
using Dewstone.Compute.Strength;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Strength;

public sealed class FilledStiffnessTests
{
    // The sign patterns give what the full matrix of a brick gives.
    [Fact]
    public void Brick_by_patterns_is_brick_by_its_matrix()
    {
        BrickElement brick = new(0.3, 0.5, 0.7, 0.3);
        AssertHolds(brick, FilledMoments.Even([0.6f]), (i, j) => 0.6f * brick[i, j]);
    }

    // A brick of which two points are filled is what those two points give to the integral; at the Gauss points the strains are known from the element.
    [Fact]
    public void Brick_filled_at_two_gauss_points_has_their_stiffness_and_a_little_of_the_void()
    {
        BrickElement brick = new(0.3, 0.5, 0.7, 0.3);
        double g = 1.0 / Math.Sqrt(3.0);
        float[] moments = [.. Enumerable.Range(0, FilledMoments.Count).Select(m => 0.25f * PointMoment(m, g, -g, -g) + 0.5f * PointMoment(m, g, g, -g))];
        AssertHolds(brick, moments, (i, j) => 0.25 * AtPoint(1, i, j) + 0.5 * AtPoint(3, i, j) + 0.01 * 0.75 * brick[i, j]);

        double AtPoint(int gauss, int i, int j)
        {
            double[] a = [.. Enumerable.Range(0, 6).Select(s => brick.GaussStrain(gauss, s, i))], b = [.. Enumerable.Range(0, 6).Select(s => brick.GaussStrain(gauss, s, j))];
            double work = brick.Lateral * (a[0] + a[1] + a[2]) * (b[0] + b[1] + b[2]);
            for (int s = 0; s < 6; s++)
            {
                work += (s < 3 ? brick.Direct - brick.Lateral : brick.Shear) * a[s] * b[s];
            }

            return 0.3 * 0.5 * 0.7 * work;
        }
    }

    // A brick of eight children is filled as they are, wherever in them it is.
    [Fact]
    public void Moments_of_children_are_those_of_their_parent()
    {
        float[] parent = new float[FilledMoments.Count], whole = new float[FilledMoments.Count];
        for (int octant = 0; octant < 8; octant++)
        {
            (double x, double y, double z) = (0.1 * octant - 0.3, 0.7 - 0.2 * octant, 0.15 * octant - 0.5);
            float[] child = [.. Enumerable.Range(0, FilledMoments.Count).Select(m => PointMoment(m, x, y, z))];
            FilledMoments.AddChild(child, octant, parent);
            for (int m = 0; m < whole.Length; m++)
            {
                whole[m] += PointMoment(m, 0.5 * (x + Side(octant & 1)), 0.5 * (y + Side(octant & 2)), 0.5 * (z + Side(octant & 4))) / 8f;
            }
        }

        Assert.All(whole.Zip(parent), pair => Assert.Equal(pair.First, pair.Second, 1e-6f));

        static double Side(int bit) => bit == 0 ? -1.0 : 1.0;
    }

    internal static float PointMoment(int m, double x, double y, double z) => (float)(Math.Pow(x, m % 3) * Math.Pow(y, m / 3 % 3) * Math.Pow(z, m / 9));

    private static void AssertHolds(BrickElement brick, float[] moments, Func<int, int, double> stiffness)
    {
        ElasticLevel level = new(new GridShape(1, 1, 1), moments, brick, 2.0, new Parallelism(1));
        var field = level.Field();
        var force = level.Field();
        for (int i = 0; i < 24; i++)
        {
            field[i] = System.Runtime.Intrinsics.Vector256.Create(1.0 + i * i % 13, i, -i, 0.5);
        }

        level.Apply(field, force);
        for (int i = 0; i < 24; i++)
        {
            for (int lane = 0; lane < 3; lane++)
            {
                Assert.Equal(2.0 * Enumerable.Range(0, 24).Sum(j => stiffness(i, j) * field[j][lane]), force[i][lane], 1e-5);
            }
        }
    }
}
