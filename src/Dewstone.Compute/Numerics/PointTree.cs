namespace Dewstone.Compute.Numerics;

/// <summary>Nearest of many points, exact, by a k-d tree.</summary>
/// <remarks>
/// Points are split at the median of the longest side of their box until eight or fewer are left; a branch is left out when its box lies farther than the best found (Friedman,
/// Bentley and Finkel 1977; from memory). Of equally near points the one that lies first in the tree is told, which depends on the points only.
/// </remarks>
public sealed class PointTree
{
    private const int LeafPoints = 8;

    private readonly float[] points;
    private readonly int[] order;

    // Of each node: splitting axis (0 to 2) and place; the middle of a stretch splits it, so that no other links are needed.
    private readonly byte[] axes;

    /// <summary>Builds the tree.</summary>
    /// <param name="positions">x y z one after another; not changed afterwards.</param>
    public PointTree(float[] positions)
    {
        ArgumentNullException.ThrowIfNull(positions);
        points = positions;
        order = new int[positions.Length / 3];
        axes = new byte[order.Length];
        for (int i = 0; i < order.Length; i++)
        {
            order[i] = i;
        }

        Split(0, order.Length);
    }

    /// <summary>Number of points.</summary>
    public int Count => order.Length;

    /// <summary>The nearest point.</summary>
    /// <param name="x">x.</param>
    /// <param name="y">y.</param>
    /// <param name="z">z.</param>
    /// <param name="within">Points farther than this are not looked for.</param>
    /// <returns>Its number and the distance; -1 when there is none.</returns>
    public (int Point, double Distance) Nearest(double x, double y, double z, double within = double.PositiveInfinity)
    {
        (int best, double least) = (-1, within * within);
        Search(0, order.Length, (float)x, (float)y, (float)z, ref best, ref least);
        return (best, best < 0 ? double.PositiveInfinity : Math.Sqrt(least));
    }

    private void Search(int first, int end, float x, float y, float z, ref int best, ref double least)
    {
        while (end - first > LeafPoints)
        {
            int middle = first + (end - first) / 2;
            byte axis = axes[middle];
            double beyond = (axis == 0 ? x : axis == 1 ? y : z) - points[3 * order[middle] + axis];
            Look(order[middle], x, y, z, ref best, ref least);
            if (beyond < 0.0)
            {
                Search(first, middle, x, y, z, ref best, ref least);
                first = middle + 1;
            }
            else
            {
                Search(middle + 1, end, x, y, z, ref best, ref least);
                end = middle;
            }

            if (beyond * beyond > least)
            {
                return;
            }
        }

        for (int i = first; i < end; i++)
        {
            Look(order[i], x, y, z, ref best, ref least);
        }
    }

    private void Look(int point, float x, float y, float z, ref int best, ref double least)
    {
        double dx = points[3 * point] - x, dy = points[3 * point + 1] - y, dz = points[3 * point + 2] - z;
        double square = dx * dx + dy * dy + dz * dz;
        if (square < least || (square == least && best < 0))
        {
            (best, least) = (point, square);
        }
    }

    private void Split(int first, int end)
    {
        while (end - first > LeafPoints)
        {
            int middle = first + (end - first) / 2, axis = LongestAxis(first, end);
            Select(first, end, middle, axis);
            axes[middle] = (byte)axis;
            Split(first, middle);
            first = middle + 1;
        }
    }

    private int LongestAxis(int first, int end)
    {
        int longest = 0;
        float most = -1f;
        for (int axis = 0; axis < 3; axis++)
        {
            float low = float.PositiveInfinity, high = float.NegativeInfinity;
            for (int i = first; i < end; i++)
            {
                float value = points[3 * order[i] + axis];
                (low, high) = (Math.Min(low, value), Math.Max(high, value));
            }

            (longest, most) = high - low > most ? (axis, high - low) : (longest, most);
        }

        return longest;
    }

    // Hoare's selection: afterwards all before the middle are at most as large along the axis, all after at least.
    private void Select(int first, int end, int middle, int axis)
    {
        int low = first, high = end - 1;
        while (low < high)
        {
            float pivot = points[3 * order[low + (high - low) / 2] + axis];
            int i = low, j = high;
            while (i <= j)
            {
                while (points[3 * order[i] + axis] < pivot)
                {
                    i++;
                }

                while (points[3 * order[j] + axis] > pivot)
                {
                    j--;
                }

                if (i <= j)
                {
                    (order[i], order[j]) = (order[j], order[i]);
                    i++;
                    j--;
                }
            }

            if (middle <= j)
            {
                high = j;
            }
            else if (middle >= i)
            {
                low = i;
            }
            else
            {
                return;
            }
        }
    }
}
