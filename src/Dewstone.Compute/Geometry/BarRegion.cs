using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>A round bar with ball ends.</summary>
/// <param name="From">One end of its centre line, metres, unit frame.</param>
/// <param name="To">The other end; not the same point.</param>
/// <param name="Radius">Radius, metres.</param>
internal readonly record struct BarRegion(Point3 From, Point3 To, double Radius) : IRegion
{
    /// <inheritdoc/>
    public double Distance(Point3 point)
    {
        Point3 along = To - From;
        double share = Math.Clamp(Point3.Dot(point - From, along) / Point3.Dot(along, along), 0.0, 1.0);
        return (point - From - along * share).Norm - Radius;
    }
}
