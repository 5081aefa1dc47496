using Dewstone.Model.Results;

namespace Dewstone.Cli.Commands;

/// <summary>What <c>compile</c> or <c>check</c> was asked for.</summary>
internal sealed record JobRequest
{
    /// <summary>Unit files, as written.</summary>
    public required IReadOnlyList<string> Units { get; init; }

    /// <summary>Mix instead of the unit's.</summary>
    public string? Mix { get; init; }

    /// <summary>Printer instead of the unit's.</summary>
    public string? Printer { get; init; }

    /// <summary>Sites instead of the unit's: the first is the job's, the others are compared with it.</summary>
    public IReadOnlyList<string> Sites { get; init; } = [];

    /// <summary>Needles file instead of the printer's.</summary>
    public string? Needles { get; init; }

    /// <summary>What was measured on the night.</summary>
    public string? Tonight { get; init; }

    /// <summary>Folder no named file may lie outside of.</summary>
    public string? Root { get; init; }

    /// <summary>Cells a voxel side.</summary>
    public required int Cells { get; init; }

    /// <summary>Threads.</summary>
    public required Parallelism Parallelism { get; init; }

    /// <summary>Released findings.</summary>
    public IReadOnlyList<Acceptance> Accept { get; init; } = [];

    /// <summary>Correct the doses against the real wetting.</summary>
    public bool Correct { get; init; } = true;

    /// <summary>Trials with perturbed inputs; 0 for none.</summary>
    public int Trials { get; init; }

    /// <summary>Job folder whose placement is kept and whose doses are started from; null to start anew.</summary>
    public string? Like { get; init; }

    /// <summary>One JSON document on standard output.</summary>
    public bool Json { get; init; }

    /// <summary>No progress, no notes.</summary>
    public bool Quiet { get; init; }

    /// <summary>Where to write SARIF; null for nowhere.</summary>
    public string? SarifFile { get; init; }
}
