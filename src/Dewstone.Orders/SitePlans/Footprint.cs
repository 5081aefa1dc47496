namespace Dewstone.Orders.SitePlans;

/// <summary>A convex outline on the ground.</summary>
/// <param name="corners">Its corners in turn, three or more.</param>
internal sealed class Footprint(GroundPoint[] corners)
{
    /// <summary>Least of the first coordinate, m.</summary>
    public double Begin { get; } = corners.Min(corner => corner.EastMetres);

    /// <summary>Most of it, m.</summary>
    public double End { get; } = corners.Max(corner => corner.EastMetres);

    private GroundPoint[] Corners => corners;

    /// <summary>Clear distance to another outline; of two convex outlines apart, a corner of one and a side of the other are nearest.</summary>
    /// <param name="other">The other.</param>
    /// <returns>m; 0 where they meet or overlap.</returns>
    public double ClearMetres(Footprint other) =>
        Overlaps(other) ? 0.0 : Math.Min(Corners.Min(other.DistanceTo), other.Corners.Min(DistanceTo));

    private double DistanceTo(GroundPoint point)
    {
        double least = double.PositiveInfinity;
        for (int i = 0; i < corners.Length; i++)
        {
            least = Math.Min(least, DistanceToSide(point, corners[i], corners[(i + 1) % corners.Length]));
        }

        return least;
    }

    private static double DistanceToSide(GroundPoint point, GroundPoint from, GroundPoint to)
    {
        double east = to.EastMetres - from.EastMetres, north = to.NorthMetres - from.NorthMetres;
        double along = ((point.EastMetres - from.EastMetres) * east + (point.NorthMetres - from.NorthMetres) * north) / (east * east + north * north);
        double share = Math.Clamp(along, 0.0, 1.0);
        return Math.Sqrt(Square(point.EastMetres - from.EastMetres - share * east) + Square(point.NorthMetres - from.NorthMetres - share * north));
    }

    // Two convex outlines are apart when some side of one has all of the other beyond it.
    private bool Overlaps(Footprint other) => !HasOutside(Corners, other.Corners) && !HasOutside(other.Corners, Corners);

    private static bool HasOutside(GroundPoint[] one, GroundPoint[] other)
    {
        for (int i = 0; i < one.Length; i++)
        {
            GroundPoint from = one[i], to = one[(i + 1) % one.Length], inside = one[(i + 2) % one.Length];
            double side = Side(from, to, inside);
            if (other.All(corner => Side(from, to, corner) * side < 0.0))
            {
                return true;
            }
        }

        return false;
    }

    private static double Side(GroundPoint from, GroundPoint to, GroundPoint point) =>
        (to.EastMetres - from.EastMetres) * (point.NorthMetres - from.NorthMetres) - (to.NorthMetres - from.NorthMetres) * (point.EastMetres - from.EastMetres);

    private static double Square(double value) => value * value;
}
