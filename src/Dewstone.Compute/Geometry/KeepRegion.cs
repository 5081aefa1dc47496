using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>One keep zone of a shape as described, parts beyond the body included.</summary>
/// <param name="Shape">The shape.</param>
/// <param name="Zone">Index among the unit's keep zones.</param>
internal readonly record struct KeepRegion(ReefShape Shape, int Zone) : IRegion
{
    /// <inheritdoc/>
    public double Distance(Point3 point) => Shape.Keep.Distance(Zone, point.X, point.Y, point.Z);
}
