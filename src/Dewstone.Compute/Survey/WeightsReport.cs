using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Survey;

/// <summary>What the weights of many units say.</summary>
public sealed record WeightsReport
{
    /// <summary>The units, in order.</summary>
    public required IReadOnlyList<WeighedUnit> Units { get; init; }

    /// <summary>Control chart of the weights, kg.</summary>
    public required ControlChart Chart { get; init; }

    /// <summary>Mass predicted, kg.</summary>
    public required double PredictedKilograms { get; init; }

    /// <summary>Half width of the 95 % interval of the mean, kg.</summary>
    public required double MeanHalfWidthKilograms { get; init; }

    /// <summary>Change from the first unit to the last by a straight line, kg.</summary>
    public required double DriftKilograms { get; init; }

    /// <summary>Half width of the 95 % interval of that, kg.</summary>
    public required double DriftHalfWidthKilograms { get; init; }

    /// <summary>Loose density that would explain the mean, kg/m3, the hardened volume being as predicted.</summary>
    public required double ExplainingLooseKilogramsPerCubicMetre { get; init; }

    /// <summary>Relative change of all doses that would explain the mean, 1; null where the mass hardly depends on the doses.</summary>
    public double? ExplainingDoseChange { get; init; }

    /// <summary>Findings DW3082 to DW3084.</summary>
    public required IReadOnlyList<Diagnostic> Findings { get; init; }
}
