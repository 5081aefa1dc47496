using Dewstone.Model.Description;

namespace Dewstone.Model.Results;

/// <summary>How strong the hardened solid is, when it may be dug out and lifted, and how it hangs. A prediction; a licensed engineer decides on lifting.</summary>
public sealed record StrengthReport
{
    /// <summary>Rule in force.</summary>
    public required StrengthRule Rule { get; init; }

    /// <summary>Whether the mix says nothing of strength, so that the rule is assumed.</summary>
    public required bool RuleAssumed { get; init; }

    /// <summary>Cement class: S, N or R.</summary>
    public required string CementClass { get; init; }

    /// <summary>Curing temperature, degC.</summary>
    public required double CuringCelsius { get; init; }

    /// <summary>Equivalent days at 20 degC a day, 1.</summary>
    public required double AgeRate { get; init; }

    /// <summary>Mean strength at 28 equivalent days over the hardened volume, Pa.</summary>
    public required double MeanPascals { get; init; }

    /// <summary>Strength that 5, 50 and 95 % of the hardened volume do not reach, at 28 equivalent days, Pa.</summary>
    public required (double P5, double P50, double P95) Percentiles { get; init; }

    /// <summary>Strength at some ages.</summary>
    public required IReadOnlyList<StrengthAtAge> Ages { get; init; }

    /// <summary>Days before which loose mix is not cleared away; null when it never grows strong enough.</summary>
    public double? DigOutDays { get; init; }

    /// <summary>Days before which the unit is not lifted; null when it never may be.</summary>
    public double? LiftDays { get; init; }

    /// <summary>Mean strength at which it is lifted, Pa.</summary>
    public required double LiftPascals { get; init; }

    /// <summary>Tension by load case, without a case that causes none; without lifting where the file does not say how, or the unit would not stay level.</summary>
    public required IReadOnlyList<TensionResult> Tension { get; init; }

    /// <summary>Bricks along the longest side that the tension was computed with.</summary>
    public required int Bricks { get; init; }

    /// <summary>Strength and tension for drawing.</summary>
    public required BodyMap Map { get; init; }

    /// <summary>The hang.</summary>
    public required LiftingReport Lifting { get; init; }

    /// <summary>What the paste of mean water/cement is made of at 28 equivalent days; null when its water does not suffice for the hydration told.</summary>
    public PasteVolumes? Paste { get; init; }

    /// <summary>How much warmer the hardened solid would get within 3 equivalent days if it lost no heat, K: an upper bound.</summary>
    public required double HeatRiseKelvin { get; init; }

    /// <summary>How it stands to limits for concrete in sea water.</summary>
    public required IReadOnlyList<ExposureVerdict> Exposure { get; init; }
}
