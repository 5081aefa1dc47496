using Dewstone.Compute.Seabed;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Cli.Commands;

/// <summary>What came of one unit.</summary>
internal sealed record UnitOutcome
{
    /// <summary>The unit's file, as written.</summary>
    public required string File { get; init; }

    /// <summary>Name of the unit; its file's name when it could not be read.</summary>
    public required string Name { get; init; }

    /// <summary>All findings, those of writing included.</summary>
    public required IReadOnlyList<Diagnostic> Findings { get; init; }

    /// <summary>The job; null when a fault stopped it before wetting or only the drawing was checked.</summary>
    public CompiledJob? Job { get; init; }

    /// <summary>How it stands at the other sites asked for, in their order; its own is the job's.</summary>
    public IReadOnlyList<SeabedResult> Elsewhere { get; init; } = [];

    /// <summary>The folder written; null when none was.</summary>
    public string? Folder { get; init; }

    /// <summary>Exit code of this unit alone.</summary>
    public required int ExitCode { get; init; }

    /// <summary>Findings of a level that were not released.</summary>
    /// <param name="severity">The level.</param>
    /// <returns>How many.</returns>
    public int Count(Severity severity) => Findings.Count(f => f.Severity == severity && f.AcceptedBecause is null);
}
