using Dewstone.Model.Results;

namespace Dewstone.Jobs.Surveys;

/// <summary>A reading of a gauge beside what was predicted.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="PredictedMetres">Predicted, m.</param>
/// <param name="RequiredMetres">Required, m; null when nothing is.</param>
/// <param name="ToleranceMetres">By how much it may fall below the prediction, m.</param>
public readonly record struct GaugedPlace(GaugeReading Reading, double PredictedMetres, double? RequiredMetres, double ToleranceMetres)
{
    /// <summary>Whether it is as predicted and as required.</summary>
    public bool IsMet => Reading.Metres >= PredictedMetres - ToleranceMetres && !IsBelowRequired;

    /// <summary>Whether it is below what is required: openings without, walls with the tolerance.</summary>
    public bool IsBelowRequired => Reading.Metres < RequiredMetres - (Reading.Kind == GaugeKind.Wall ? ToleranceMetres : 0.0);
}
