namespace Dewstone.Orders.SitePlans;

/// <summary>The ellipsoid that satellite positions and GeoJSON refer to.</summary>
/// <remarks>
/// Radii of curvature of an ellipsoid of revolution at latitude phi, with e2 = f (2 - f): along the meridian M = a (1 - e2) / (1 - e2 sin2 phi)^(3/2),
/// across it (prime vertical) N = a / (1 - e2 sin2 phi)^(1/2). Source: NIMA TR8350.2, "Department of Defense World Geodetic System 1984", 3rd edition,
/// table 3.1 (a and 1/f); the radii stand in every textbook of geodesy.
/// </remarks>
public static class Wgs84
{
    /// <summary>Half the greatest diameter, m.</summary>
    public const double SemiMajorMetres = 6378137.0;

    /// <summary>Flattening, 1.</summary>
    public const double Flattening = 1.0 / 298.257223563;

    private const double EccentricitySquared = Flattening * (2.0 - Flattening);

    /// <summary>Radius of curvature along the meridian.</summary>
    /// <param name="latitudeRadians">Geodetic latitude, rad.</param>
    /// <returns>m.</returns>
    public static double MeridianRadiusMetres(double latitudeRadians)
    {
        double w2 = Squeeze(latitudeRadians);
        return SemiMajorMetres * (1.0 - EccentricitySquared) / (w2 * Math.Sqrt(w2));
    }

    /// <summary>Radius of curvature across the meridian.</summary>
    /// <param name="latitudeRadians">Geodetic latitude, rad.</param>
    /// <returns>m.</returns>
    public static double PrimeVerticalRadiusMetres(double latitudeRadians) => SemiMajorMetres / Math.Sqrt(Squeeze(latitudeRadians));

    private static double Squeeze(double latitudeRadians)
    {
        double sine = Math.Sin(latitudeRadians);
        return 1.0 - EccentricitySquared * sine * sine;
    }
}
