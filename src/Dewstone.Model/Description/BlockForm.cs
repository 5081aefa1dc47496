using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>An upright block with optional rounded edges.</summary>
public sealed record BlockForm : SolidForm
{
    /// <summary>Full edges, metres.</summary>
    public required Size3 Size { get; init; }

    /// <summary>Radius of its edges and corners; at most half the smallest edge.</summary>
    public Length Rounding { get; init; }
}
