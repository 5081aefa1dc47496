using Dewstone.Model.Description;
using Dewstone.Model.Measurements;

namespace Dewstone.Compute.Calibration;

/// <summary>What the readings say of one needle. Intervals are of 95 %.</summary>
public sealed record NeedleFit
{
    /// <summary>Gain, offset, repeatability and state as the needles file takes them.</summary>
    public required NeedleState State { get; init; }

    /// <summary>Readings in the fit.</summary>
    public required int Used { get; init; }

    /// <summary>Readings left out as outliers, in the order of their distance.</summary>
    public required IReadOnlyList<NeedleReading> Outliers { get; init; }

    /// <summary>Half width of the gain's interval, 1; null without freedom.</summary>
    public double? GainHalfWidth { get; init; }

    /// <summary>Half width of the offset's interval, mL; null when no offset is fitted, or without freedom.</summary>
    public double? OffsetHalfWidth { get; init; }

    /// <summary>The dose at which deviation and drift are judged: the mean of the used ones, weighted as the fit weighs them, mL.</summary>
    public required double MiddleMillilitres { get; init; }

    /// <summary>Delivered over asked at the middle dose, less 1.</summary>
    public required double Deviation { get; init; }

    /// <summary>Half width of the deviation's interval; null without freedom.</summary>
    public double? DeviationHalfWidth { get; init; }

    /// <summary>Change at the middle dose since the last check, a share; null without one.</summary>
    public double? Drift { get; init; }

    /// <summary>Why it is not ok, a phrase each; empty when it is.</summary>
    public IReadOnlyList<string> Reasons { get; init; } = [];

    /// <summary>Whether the drift is larger than the readings' own uncertainty and than 1 %.</summary>
    public bool HasDrifted => Drift is { } drift && Math.Abs(drift) >= Math.Max(NeedleRules.LeastDrift, DeviationHalfWidth ?? double.PositiveInfinity);
}
