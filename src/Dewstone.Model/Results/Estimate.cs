namespace Dewstone.Model.Results;

/// <summary>Materials, carbon, cost and time of one job. Masses kg, volumes m3, times s.</summary>
public sealed record Estimate
{
    /// <summary>Dry mix spread, all layers over the whole bin, kg.</summary>
    public required double SpreadKilograms { get; init; }

    /// <summary>Dry mix in the hardened solid, kg.</summary>
    public required double HardenedDryKilograms { get; init; }

    /// <summary>Loose mix that can be spread again, kg.</summary>
    public required double ReusableKilograms { get; init; }

    /// <summary>Mix lost, kg.</summary>
    public required double LostKilograms { get; init; }

    /// <summary>Fresh mass of the unit: dry mix and all water in the hardened solid, kg.</summary>
    public required double FreshKilograms { get; init; }

    /// <summary>Mass on the hook at dig-out, kg.</summary>
    public required double LiftKilograms { get; init; }

    /// <summary>Mass once dried: dry mix and chemically bound water, kg.</summary>
    public required double DryKilograms { get; init; }

    /// <summary>Mass with its pores full of sea water, kg.</summary>
    public required double SaturatedKilograms { get; init; }

    /// <summary>Apparent mass under water, kg; negative never.</summary>
    public required double SubmergedKilograms { get; init; }

    /// <summary>Water injected, all layers, cubic metres.</summary>
    public required double WaterCubicMetres { get; init; }

    /// <summary>Water injected by layer, cubic metres, lowest first.</summary>
    public required IReadOnlyList<double> WaterByLayerCubicMetres { get; init; }

    /// <summary>Flush water, cubic metres.</summary>
    public required double FlushCubicMetres { get; init; }

    /// <summary>Binder in the hardened solid, kg.</summary>
    public required double BinderKilograms { get; init; }

    /// <summary>Additives used, by name, kg, in the mix's order.</summary>
    public required IReadOnlyList<NamedAmount> AdditiveKilograms { get; init; }

    /// <summary>Recycled share of the hardened dry mix, 0 to 1.</summary>
    public required double RecycledShare { get; init; }

    /// <summary>Solid saved against the filled outer box, share of the box, 0 to 1; below 0 when more hardens than the box holds.</summary>
    public required double SavingAgainstFilledBox { get; init; }

    /// <summary>CO2 equivalent of what is used up (hardened and lost mix), kg.</summary>
    public required double CarbonKilograms { get; init; }

    /// <summary>Cost of what is used up (mix, liquid, additives not priced), in the mix's currency.</summary>
    public required double Cost { get; init; }

    /// <summary>Currency.</summary>
    public required string Currency { get; init; }

    /// <summary>Preparing, s.</summary>
    public required double SetupSeconds { get; init; }

    /// <summary>Printing time without setup, s: the sum of the sequence.</summary>
    public required double PrintSeconds { get; init; }

    /// <summary>Printing time by action, s, in the order of the actions.</summary>
    public required IReadOnlyList<NamedAmount> SecondsByAction { get; init; }
}
