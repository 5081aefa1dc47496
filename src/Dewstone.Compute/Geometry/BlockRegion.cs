using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>An upright block.</summary>
/// <param name="Low">Lower corner, metres, unit frame.</param>
/// <param name="High">Upper corner.</param>
internal readonly record struct BlockRegion(Point3 Low, Point3 High) : IRegion
{
    /// <inheritdoc/>
    public double Distance(Point3 point)
    {
        Point3 middle = (Low + High) * 0.5, half = (High - Low) * 0.5, from = point - middle;
        return Forms.BoxDistance(Math.Abs(from.X) - half.X, Math.Abs(from.Y) - half.Y, Math.Abs(from.Z) - half.Z);
    }
}
