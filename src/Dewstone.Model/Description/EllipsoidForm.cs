using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>An ellipsoid with its axes along x, y, z.</summary>
public sealed record EllipsoidForm : SolidForm
{
    /// <summary>Full axes, metres.</summary>
    public required Size3 Size { get; init; }
}
