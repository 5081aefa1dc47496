namespace Dewstone.Jobs.Resuming;

/// <summary>What a stop does to the unit, beside the print in one go.</summary>
public sealed record JointReport
{
    /// <summary>Layer below the joint, or the layer that was watered in two goes, from 1.</summary>
    public required int LowerLayer { get; init; }

    /// <summary>Layer above it.</summary>
    public required int UpperLayer { get; init; }

    /// <summary>Time from the first dose of the lower layer to the first dose after the stop, s.</summary>
    public required double AgeSeconds { get; init; }

    /// <summary>Time after which the lower layer's water no longer moves, s.</summary>
    public required double WindowSeconds { get; init; }

    /// <summary>Wanted solid that stays loose in the two layers, print in one go, m3.</summary>
    public required double UnsetInOneGoCubicMetres { get; init; }

    /// <summary>The same with the stop, m3.</summary>
    public required double UnsetCubicMetres { get; init; }

    /// <summary>Shape match in one go, 0 to 1.</summary>
    public required double ShapeMatchInOneGo { get; init; }

    /// <summary>Shape match with the stop, 0 to 1.</summary>
    public required double ShapeMatch { get; init; }
}
