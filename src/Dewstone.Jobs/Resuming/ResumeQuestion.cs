using Dewstone.Model.Description;
using Dewstone.Model.Results;
using Dewstone.Reading.Job;

namespace Dewstone.Jobs.Resuming;

/// <summary>A job that was stopped, and what is known of the stop.</summary>
public sealed record ResumeQuestion
{
    /// <summary>The job that was being printed.</summary>
    public required EarlierJob Job { get; init; }

    /// <summary>Its manifest.</summary>
    public required Manifest Manifest { get; init; }

    /// <summary>Layers that are done.</summary>
    public required int AfterLayer { get; init; }

    /// <summary>Stations of the next layer that are done; 0 when it is not even spread.</summary>
    public int Station { get; init; }

    /// <summary>How long the machine stands, milliseconds.</summary>
    public required long PauseMilliseconds { get; init; }

    /// <summary>The needles from now on; null when they are as they were.</summary>
    public NeedleTable? Needles { get; init; }

    /// <summary>What was really delivered; null when the tables are taken as delivered.</summary>
    public IReadOnlyList<DeliveredDose>? RunLog { get; init; }

    /// <summary>The log's file, for findings.</summary>
    public string RunLogFile { get; init; } = "";

    /// <summary>Files beside the job that it is answered from.</summary>
    public IReadOnlyList<InputFile> Inputs { get; init; } = [];

    /// <summary>Findings the user releases, beside those released of the job.</summary>
    public IReadOnlyList<Acceptance> Accept { get; init; } = [];

    /// <summary>Version of the tool, written into the job.</summary>
    public required string ToolVersion { get; init; }
}
