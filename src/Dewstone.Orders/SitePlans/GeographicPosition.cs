namespace Dewstone.Orders.SitePlans;

/// <summary>A position on WGS 84.</summary>
/// <param name="LatitudeDegrees">Degrees, north positive.</param>
/// <param name="LongitudeDegrees">Degrees, east positive, from -180 to below 180.</param>
public readonly record struct GeographicPosition(double LatitudeDegrees, double LongitudeDegrees);
