namespace Dewstone.Orders.SitePlans;

/// <summary>Metres east and north of an anchor as positions, and back.</summary>
/// <remarks>
/// North is measured along the meridian and east along the parallel of the point itself, both with the radii of <see cref="Wgs84"/> half way to it: for
/// plans of some kilometres. A tangent plane differs from it by about d2 tan(phi) / 2R: 4 mm at 300 m in 40 degrees. Not for use near a pole.
/// </remarks>
/// <param name="anchor">Origin of the frame.</param>
public sealed class AnchorFrame(GeographicPosition anchor)
{
    private const double RadiansPerDegree = Math.PI / 180.0;

    /// <summary>Position of a point.</summary>
    /// <param name="point">Metres about the anchor.</param>
    /// <returns>Its position.</returns>
    public GeographicPosition Position(GroundPoint point)
    {
        double from = anchor.LatitudeDegrees * RadiansPerDegree;
        double first = from + point.NorthMetres / Wgs84.MeridianRadiusMetres(from);
        double to = from + point.NorthMetres / Wgs84.MeridianRadiusMetres(0.5 * (from + first));
        double turn = point.EastMetres / ParallelRadiusMetres(to);
        return new GeographicPosition(to / RadiansPerDegree, anchor.LongitudeDegrees + turn / RadiansPerDegree);
    }

    /// <summary>Metres about the anchor of a position.</summary>
    /// <param name="position">The position.</param>
    /// <returns>The point.</returns>
    public GroundPoint Point(GeographicPosition position)
    {
        double from = anchor.LatitudeDegrees * RadiansPerDegree, to = position.LatitudeDegrees * RadiansPerDegree;
        double turn = (position.LongitudeDegrees - anchor.LongitudeDegrees) * RadiansPerDegree;
        return new GroundPoint(turn * ParallelRadiusMetres(to), (to - from) * Wgs84.MeridianRadiusMetres(0.5 * (from + to)));
    }

    private static double ParallelRadiusMetres(double latitudeRadians) => Wgs84.PrimeVerticalRadiusMetres(latitudeRadians) * Math.Cos(latitudeRadians);
}
