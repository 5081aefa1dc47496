using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>Doses of a job and how they were come by.</summary>
public sealed record DoseResult
{
    /// <summary>The doses as rounded.</summary>
    public required DosePlan Doses { get; init; }

    /// <summary>Dose of a voxel that is wanted all through.</summary>
    public required NominalDose Nominal { get; init; }

    /// <summary>Best single dose of a full voxel, to 1 mL, mL.</summary>
    public required double PlainMillilitres { get; init; }

    /// <summary>Plain doses with it, as rounded.</summary>
    public required DosePlan Plain { get; init; }

    /// <summary>Limits the doses were held to.</summary>
    public required DoseLimits Limits { get; init; }

    /// <summary>Share of each voxel that is wanted solid, 0 to 1; index order of the lattice.</summary>
    public required double[] VoxelFractions { get; init; }

    /// <summary>Wanted solid on the finest cells that the doses were judged on; null when they were judged on none.</summary>
    public TargetField? JudgedOn { get; init; }

    /// <summary>Findings DW3001 to DW3006, DW4008 and DW4009, then DW3014, in order.</summary>
    public required IReadOnlyList<Diagnostic> Findings { get; init; }

    /// <summary>The solves that led here, in order; empty when none was made.</summary>
    public IReadOnlyList<DoseStep> History { get; init; } = [];

    /// <summary>Whether the correction brought no noticeable gain over plain doses.</summary>
    public bool Stalled { get; init; }
}
