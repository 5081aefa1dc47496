using Dewstone.Compute.Survey;
using Dewstone.Jobs.Emission;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Jobs.Surveys;

/// <summary>What a survey found.</summary>
public sealed record SurveyResult
{
    /// <summary>Name of the unit.</summary>
    public required string Name { get; init; }

    /// <summary>As run; null when no log was given.</summary>
    public RunSurveyResult? Run { get; init; }

    /// <summary>What the weights say; null when none were given.</summary>
    public WeightsReport? Weights { get; init; }

    /// <summary>Gauge readings beside the prediction.</summary>
    public IReadOnlyList<GaugedPlace> Gauges { get; init; } = [];

    /// <summary>The scan against the prediction; null when none was given or it cannot be of the unit.</summary>
    public ScanSurveyResult? Scan { get; init; }

    /// <summary>Pictures, charts and surfaces; empty when none were wanted.</summary>
    public IReadOnlyList<EmittedFile> Files { get; init; } = [];

    /// <summary>All findings, in the order of the measurements.</summary>
    public required IReadOnlyList<Diagnostic> Findings { get; init; }

    /// <summary>Whether a file of measurements does not belong to the job or cannot be used.</summary>
    public bool IsInputAtFault => Findings.Any(f => f.Severity == Severity.Error && f.Code.StartsWith("DW8", StringComparison.Ordinal));

    /// <summary>What becomes of the unit: the worst that any measurement says.</summary>
    public Verdict Verdict => Run?.Verdict == Verdict.Scrap ? Verdict.Scrap : Findings.Any(f => f.Severity == Severity.Error) ? Verdict.Hold : Verdict.Release;
}
