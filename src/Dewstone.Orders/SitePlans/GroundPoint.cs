namespace Dewstone.Orders.SitePlans;

/// <summary>A point on the ground about the anchor of a site plan.</summary>
/// <param name="EastMetres">m.</param>
/// <param name="NorthMetres">m.</param>
public readonly record struct GroundPoint(double EastMetres, double NorthMetres);
