using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Model.Results;

/// <summary>Where a unit stands on the needle grid, and why.</summary>
public sealed record Registration
{
    /// <summary>The place: turn, shift and layers are all set.</summary>
    public required PlacementWish Wish { get; init; }

    /// <summary>True when the unit's file left nothing free.</summary>
    public required bool Fixed { get; init; }

    /// <summary>Why it does not stand in the middle, straight and without a turn.</summary>
    public RegistrationReasons Reasons { get; init; }

    /// <summary>Places tried on the way, in order; empty when one place alone was possible.</summary>
    public IReadOnlyList<RegistrationTrial> Trials { get; init; } = [];

    /// <summary>Wanted solid under blocked needles in the middle, straight and without a turn but for what the file fixes; null when the unit does not fit so.</summary>
    public BlockedSolid? BlockedCentred { get; init; }

    /// <summary>Wanted solid under blocked needles at the chosen place; null when the unit fits nowhere.</summary>
    public BlockedSolid? Blocked { get; init; }

    /// <summary>Findings DW4018.</summary>
    public IReadOnlyList<Diagnostic> Findings { get; init; } = [];

    /// <summary>Solves spent, all trials together.</summary>
    public int Solves { get; init; }
}
