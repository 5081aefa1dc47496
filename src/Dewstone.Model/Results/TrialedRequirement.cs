namespace Dewstone.Model.Results;

/// <summary>How one requirement came out in the trials. Values in the requirement's unit.</summary>
public sealed record TrialedRequirement
{
    /// <summary>The requirement with the job's own figure, from the job's cells.</summary>
    public required RequirementResult Nominal { get; init; }

    /// <summary>The job's figure on the cells of the trials, nothing perturbed.</summary>
    public required double Unperturbed { get; init; }

    /// <summary>Trials that met it.</summary>
    public required int Met { get; init; }

    /// <summary>Lower end of the share that meets it, 95 % confidence, 0 to 1.</summary>
    public required double ShareLow { get; init; }

    /// <summary>Upper end of the share that meets it, 95 % confidence, 0 to 1.</summary>
    public required double ShareHigh { get; init; }

    /// <summary>Value that 5 % of the trials stay below.</summary>
    public required double Percentile5 { get; init; }

    /// <summary>Median value.</summary>
    public required double Median { get; init; }

    /// <summary>Value that 95 % of the trials stay below.</summary>
    public required double Percentile95 { get; init; }

    /// <summary>What drives it; null when nothing stands out.</summary>
    public TrialDriver? Driver { get; init; }
}
