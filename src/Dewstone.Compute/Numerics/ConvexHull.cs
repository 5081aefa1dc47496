namespace Dewstone.Compute.Numerics;

/// <summary>Smallest convex outline around points of a plane.</summary>
/// <remarks>Monotone chain (Andrew, "Another efficient algorithm for convex hulls in two dimensions", 1979; from memory).</remarks>
internal static class ConvexHull
{
    /// <summary>Finds the outline.</summary>
    /// <param name="points">Points, in any order.</param>
    /// <returns>Its corners counter-clockwise, without those on straight edges; all points when they are fewer than three.</returns>
    public static (double X, double Y)[] Of(IEnumerable<(double X, double Y)> points)
    {
        (double X, double Y)[] sorted = [.. points.Distinct().Order()];
        if (sorted.Length < 3)
        {
            return sorted;
        }

        List<(double X, double Y)> hull = [];
        Walk(sorted, hull);
        int lower = hull.Count - 1;
        hull.RemoveAt(lower);
        Array.Reverse(sorted);
        Walk(sorted, hull);
        hull.RemoveAt(hull.Count - 1);
        return [.. hull];
    }

    private static void Walk((double X, double Y)[] points, List<(double X, double Y)> hull)
    {
        int first = hull.Count;
        foreach ((double X, double Y) point in points)
        {
            while (hull.Count - first >= 2 && Turn(hull[^2], hull[^1], point) <= 0.0)
            {
                hull.RemoveAt(hull.Count - 1);
            }

            hull.Add(point);
        }
    }

    private static double Turn((double X, double Y) a, (double X, double Y) b, (double X, double Y) c) =>
        (b.X - a.X) * (c.Y - a.Y) - (b.Y - a.Y) * (c.X - a.X);
}
