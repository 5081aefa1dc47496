using Dewstone.Model.Results;

namespace Dewstone.Cli.Commands;

/// <summary>What <c>resume</c> was asked for.</summary>
internal sealed record ResumeRequest
{
    /// <summary>Job folder.</summary>
    public required string Job { get; init; }

    /// <summary>Layers done.</summary>
    public required int AfterLayer { get; init; }

    /// <summary>Stations of the next layer done; null when it is not even spread.</summary>
    public int? Station { get; init; }

    /// <summary>How long the machine stands, milliseconds.</summary>
    public required long PauseMilliseconds { get; init; }

    /// <summary>Run log; null for none.</summary>
    public string? RunLog { get; init; }

    /// <summary>Needles file from now on; null when they are as they were.</summary>
    public string? Needles { get; init; }

    /// <summary>Folder that gets the new job; null for the one beside the old job.</summary>
    public string? OutputFolder { get; init; }

    /// <summary>Released findings.</summary>
    public IReadOnlyList<Acceptance> Accept { get; init; } = [];

    /// <summary>Threads.</summary>
    public required Parallelism Parallelism { get; init; }
}
