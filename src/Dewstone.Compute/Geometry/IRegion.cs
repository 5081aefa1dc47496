using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>A body in the unit frame known by its distance; implemented by structs, so that asking costs no virtual call.</summary>
internal interface IRegion
{
    /// <summary>Signed distance, never changing faster than the point moves.</summary>
    /// <param name="point">Metres, unit frame.</param>
    /// <returns>Metres, negative inside.</returns>
    double Distance(Point3 point);
}
