using Dewstone.Model.Results;

namespace Dewstone.Cli.Commands;

/// <summary>What <c>survey</c> was asked for.</summary>
internal sealed record SurveyRequest
{
    /// <summary>Job folder.</summary>
    public required string Job { get; init; }

    /// <summary>Run log; null for none.</summary>
    public string? RunLog { get; init; }

    /// <summary>Scale weights; null for none.</summary>
    public string? Weights { get; init; }

    /// <summary>Gauge readings; null for none.</summary>
    public string? Gauges { get; init; }

    /// <summary>Scan; null for none.</summary>
    public string? Scan { get; init; }

    /// <summary>Folder that gets the survey's folder; null to write nothing.</summary>
    public string? OutputFolder { get; init; }

    /// <summary>Threads.</summary>
    public required Parallelism Parallelism { get; init; }
}
