using Dewstone.Compute.Survey;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Surveys;

/// <summary>A unit as run, against as planned.</summary>
public sealed record RunSurveyResult
{
    /// <summary>What the log says.</summary>
    public required RunLogReport Log { get; init; }

    /// <summary>Figures of the solid as planned.</summary>
    public required SolidSummary Planned { get; init; }

    /// <summary>Figures of the solid as run.</summary>
    public required SolidSummary AsRun { get; init; }

    /// <summary>Mass on the hook as planned, kg.</summary>
    public required double PlannedKilograms { get; init; }

    /// <summary>Mass on the hook as run, kg.</summary>
    public required double AsRunKilograms { get; init; }

    /// <summary>Requirements as planned; in the order of <see cref="RequirementsAsRun"/>.</summary>
    public required IReadOnlyList<RequirementResult> RequirementsPlanned { get; init; }

    /// <summary>Requirements as run.</summary>
    public required IReadOnlyList<RequirementResult> RequirementsAsRun { get; init; }

    /// <summary>What differs, a layer each, from the lowest.</summary>
    public required IReadOnlyList<LayerChange> Layers { get; init; }

    /// <summary>Findings of the log, then requirements lost, then what the solid as run has and the plan has not.</summary>
    public required IReadOnlyList<Diagnostic> Findings { get; init; }

    /// <summary>What becomes of the unit by the run alone.</summary>
    public required Verdict Verdict { get; init; }
}
