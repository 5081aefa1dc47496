using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Tests.Numerics;

public sealed class RidgePeakTests
{
    private static readonly GridShape Shape = new(5, 5, 5);

    // A slab between walls at x = a and x = b has the clearance min(x - a, b - x), highest midway: closed form. The peak lies in the cell whose centre stands
    // at 2.5 edges when it is within half an edge of it, and it rises above that centre's clearance by its distance from it.
    [Theory]
    [InlineData(2.5, 0.0)]
    [InlineData(2.7, 0.2)]
    [InlineData(2.3, 0.2)]
    [InlineData(2.95, 0.45)]
    public void Peak_between_two_walls_is_midway(double middle, double gain)
    {
        float[] clearance = [.. Enumerable.Range(0, Shape.Count).Select(i => (float)(10.0 - Math.Abs(i % 5 + 0.5 - middle)))];
        Assert.Equal(gain, RidgePeak.Gain(clearance, 1f, Shape, new CellSize(1.0, 1.0), 62), 1e-5);
    }

    // Nothing tells left from right: a field of seeded noise and its mirror image gain the same in every cell, those beside the grid's edge too.
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void Mirror_image_gains_the_same(int axis)
    {
        SeededDraws draws = new(7, 0);
        float[] field = [.. Enumerable.Range(0, Shape.Count).Select(i => (float)draws.Fraction((ulong)i))];
        int Mirror(int i)
        {
            int[] at = [i % 5, i / 5 % 5, i / 25];
            at[axis] = 4 - at[axis];
            return (at[2] * 5 + at[1]) * 5 + at[0];
        }

        float[] mirrored = [.. Enumerable.Range(0, Shape.Count).Select(i => field[Mirror(i)])];
        CellSize size = new(1.0, 1.0);
        float[] gains = [.. Enumerable.Range(0, Shape.Count).Select(i => RidgePeak.Gain(field, 1f, Shape, size, i))];
        Assert.Equal(gains, Enumerable.Range(0, Shape.Count).Select(i => RidgePeak.Gain(mirrored, 1f, Shape, size, Mirror(i))));
        Assert.Contains(gains, gain => gain > 0f);
    }
}
