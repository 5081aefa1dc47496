using Dewstone.Model.Results;

namespace Dewstone.Cli.Commands;

/// <summary>What <c>order compile</c> was asked for.</summary>
internal sealed record OrderCompileRequest
{
    /// <summary>The order's file, as written.</summary>
    public required string Order { get; init; }

    /// <summary>Folder that gets the order's folder.</summary>
    public required string OutputFolder { get; init; }

    /// <summary>Folder no named file may lie outside of.</summary>
    public string? Root { get; init; }

    /// <summary>Cells a voxel side.</summary>
    public required int Cells { get; init; }

    /// <summary>Threads.</summary>
    public required Parallelism Parallelism { get; init; }

    /// <summary>Task, from 0; null for the whole order.</summary>
    public int? Task { get; init; }

    /// <summary>Number of tasks.</summary>
    public int Tasks { get; init; } = 1;

    /// <summary>Keep what is done.</summary>
    public bool Continue { get; init; }

    /// <summary>One JSON document on standard output.</summary>
    public bool Json { get; init; }

    /// <summary>No progress, no notes.</summary>
    public bool Quiet { get; init; }
}
