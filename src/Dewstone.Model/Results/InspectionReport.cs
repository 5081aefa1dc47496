using Dewstone.Model.Diagnostics;

namespace Dewstone.Model.Results;

/// <summary>What the checks of the predicted solid found.</summary>
public sealed record InspectionReport
{
    /// <summary>Pieces apart from the main one.</summary>
    public required LoosePiecesReport LoosePieces { get; init; }

    /// <summary>Thickness of the walls.</summary>
    public required WallReport Wall { get; init; }

    /// <summary>Loose mix that cannot be got out.</summary>
    public required TrappedMixReport TrappedMix { get; init; }

    /// <summary>Tunnels, then ways into cavities, in the order of the unit.</summary>
    public required IReadOnlyList<ClearOpening> ClearOpenings { get; init; }

    /// <summary>Water/cement outside the band; null when no band is asked for.</summary>
    public WaterCementReport? WaterCement { get; init; }

    /// <summary>Match of the predicted and the wanted solid.</summary>
    public required ShapeMatchReport ShapeMatch { get; init; }

    /// <summary>Keep zones, then lifting places.</summary>
    public required IReadOnlyList<SoundZone> SoundZones { get; init; }

    /// <summary>Hollows that may trap an animal.</summary>
    public required IReadOnlyList<AnimalTrap> AnimalTraps { get; init; }

    /// <summary>Requirements judged here: wall, loose pieces, trapped mix, clear openings, in this order.</summary>
    public required IReadOnlyList<RequirementResult> Requirements { get; init; }

    /// <summary>Findings DW3020 to DW3029.</summary>
    public required IReadOnlyList<Diagnostic> Findings { get; init; }
}
