using Dewstone.Model.Results;

namespace Dewstone.Compute.Survey;

/// <summary>Weights of many units and what the job predicts.</summary>
public sealed record WeightsQuestion
{
    /// <summary>Units in the order in which they were printed, at least three.</summary>
    public required IReadOnlyList<WeighedUnit> Units { get; init; }

    /// <summary>File of the weights, for findings.</summary>
    public required string File { get; init; }

    /// <summary>Mass on the hook as predicted, kg.</summary>
    public required double PredictedKilograms { get; init; }

    /// <summary>Hardened volume as predicted, m3.</summary>
    public required double HardenedCubicMetres { get; init; }

    /// <summary>Density of the bed as the job takes it, kg/m3.</summary>
    public required double LooseKilogramsPerCubicMetre { get; init; }

    /// <summary>Relative change of the mass over relative change of all doses, 1; from predictions with both.</summary>
    public required double MassPerDose { get; init; }
}
