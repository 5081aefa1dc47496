using Dewstone.Model.Quantities;

namespace Dewstone.Orders.Batches;

/// <summary>What the yard and the ship need to know of a solved unit; a prediction.</summary>
public sealed record UnitFigures
{
    /// <summary>Outer box, metres, unit frame.</summary>
    public required Size3 Box { get; init; }

    /// <summary>Hardened volume, cubic metres.</summary>
    public required double HardenedCubicMetres { get; init; }

    /// <summary>Mass on the hook at dig-out, kg.</summary>
    public required double LiftKilograms { get; init; }

    /// <summary>Mass once dried, kg.</summary>
    public required double DryKilograms { get; init; }

    /// <summary>Mass with its pores full of sea water, kg.</summary>
    public required double SaturatedKilograms { get; init; }

    /// <summary>Apparent mass under water, kg.</summary>
    public required double SubmergedKilograms { get; init; }

    /// <summary>Mean strength at 28 equivalent days, Pa; null when it cannot be told.</summary>
    public double? StrengthPascals { get; init; }

    /// <summary>Days before which loose mix is not cleared away; null when it cannot be told or never comes.</summary>
    public double? DigOutDays { get; init; }

    /// <summary>Days before which the unit is not lifted; null when it cannot be told or never comes.</summary>
    public double? LiftDays { get; init; }
}
