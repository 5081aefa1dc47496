using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Compute.Calibration;

/// <summary>A calibrated mix.</summary>
public sealed record MixCalibration
{
    /// <summary>The new mix; null with an error among the findings.</summary>
    public DryMix? Mix { get; init; }

    /// <summary>Diffusivity, threshold, loose density.</summary>
    public IReadOnlyList<FittedFigure> Figures { get; init; } = [];

    /// <summary>Correlations of the figures' errors, row by row; 1 on the diagonal.</summary>
    public IReadOnlyList<double> Correlations { get; init; } = [];

    /// <summary>Exponents tried, rising.</summary>
    public IReadOnlyList<ExponentTrial> Exponents { get; init; } = [];

    /// <summary>How each kind of measurement agrees.</summary>
    public IReadOnlyList<KindReport> Kinds { get; init; } = [];

    /// <summary>Every measured figure with its fitted one.</summary>
    public IReadOnlyList<MixObservation> Observations { get; init; } = [];

    /// <summary>DW3053 to DW3059.</summary>
    public required IReadOnlyList<Diagnostic> Findings { get; init; }
}
