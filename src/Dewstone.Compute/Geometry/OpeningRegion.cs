using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>One opening of a shape as described: no fillet, no relief, keep zones not heeded.</summary>
/// <param name="Shape">The shape.</param>
/// <param name="Opening">Index in <see cref="ReefShape.Named"/>.</param>
internal readonly record struct OpeningRegion(ReefShape Shape, int Opening) : IRegion
{
    /// <inheritdoc/>
    public double Distance(Point3 point) => Shape.OpeningDistance(Opening, point);
}
