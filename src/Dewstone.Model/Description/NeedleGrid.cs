using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>Positions of the needles over the bin.</summary>
public sealed record NeedleGrid
{
    /// <summary>Distance between neighbouring positions along x and y.</summary>
    public required Length Pitch { get; init; }

    /// <summary>Height of a layer.</summary>
    public required Length LayerHeight { get; init; }

    /// <summary>x of the first position.</summary>
    public required Length OriginX { get; init; }

    /// <summary>y of the first position.</summary>
    public required Length OriginY { get; init; }

    /// <summary>Loose layers spread below the unit.</summary>
    public int UnderLayers { get; init; } = 1;
}
