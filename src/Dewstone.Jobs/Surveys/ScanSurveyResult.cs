using Dewstone.Compute.Survey;

namespace Dewstone.Jobs.Surveys;

/// <summary>A scanned unit against its prediction.</summary>
public sealed record ScanSurveyResult
{
    /// <summary>How the scan lies; its motion leads to the unit frame.</summary>
    public required ScanRegistration Registration { get; init; }

    /// <summary>Deviations of its points.</summary>
    public required ScanDeviation Deviation { get; init; }

    /// <summary>Volume within the predicted surface, m3.</summary>
    public required double PredictedCubicMetres { get; init; }

    /// <summary>Volume within the scan, m3; null when it is no closed surface.</summary>
    public double? ScannedCubicMetres { get; init; }

    /// <summary>What would explain the deviation.</summary>
    public IReadOnlyList<Suggestion> Suggestions { get; init; } = [];

    /// <summary>Whether the scan could be laid on the prediction.</summary>
    public bool Lies { get; init; }
}
