using Dewstone.Compute.Geometry;

namespace Dewstone.Compute.Dosing;

/// <summary>How doses are looked for.</summary>
public sealed record DoseSolverOptions
{
    /// <summary>False for plain doses: target fraction times the best single dose of this unit, to 1 mL.</summary>
    public bool Correct { get; init; } = true;

    /// <summary>Cells a pitch of the first solves, 2 to 32, even with shifted layers.</summary>
    public int CoarseCells { get; init; } = 4;

    /// <summary>Cells a pitch of the last solves, 2 to 32, even with shifted layers.</summary>
    public int FineCells { get; init; } = 6;

    /// <summary>Corrected solves on coarse cells, 0 or more.</summary>
    public int CoarseSolves { get; init; } = 14;

    /// <summary>Corrected solves on fine cells, 1 or more.</summary>
    public int FineSolves { get; init; } = 12;

    /// <summary>The objective and the step.</summary>
    public CorrectionRule Rule { get; init; } = new();

    /// <summary>Doses of an earlier job on the same lattice, mL, to start from and stay near; null to start anew.</summary>
    public IReadOnlyList<double>? LikeMillilitres { get; init; }

    /// <summary>The earlier job's shape; only doses within three pitches of where the wanted solid differs from it may move then. Null lets all move.</summary>
    public ReefShape? LikeShape { get; init; }

    /// <summary>Pull towards the earlier doses: share of the distance from them (of the logarithms) that is taken back each step, 0 to 1.</summary>
    public double LikeWeight { get; init; } = 0.2;
}
