using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>Where a unit will stand: water, waves, current, seabed and what is asked of it.</summary>
public sealed record Site
{
    /// <summary>Name for people.</summary>
    public required string Name { get; init; }

    /// <summary>Water.</summary>
    public required SiteWater Water { get; init; }

    /// <summary>Design wave.</summary>
    public required DesignWave Wave { get; init; }

    /// <summary>Current; null for none.</summary>
    public SeaCurrent? Current { get; init; }

    /// <summary>Seabed.</summary>
    public required SeabedSoil Seabed { get; init; }

    /// <summary>Force coefficients.</summary>
    public ForceCoefficients Forces { get; init; } = new(1.05, 1.67, 0.8);

    /// <summary>Least factors of safety.</summary>
    public SafetyFactors Safety { get; init; } = new(1.3, 1.5, 2.5);

    /// <summary>Least water over the unit at low water; null when not asked for.</summary>
    public Length? Clearance { get; init; }

    /// <summary>What the permit allows; null when not said.</summary>
    public PermitRules? Permit { get; init; }

    /// <summary>Animals it should shelter; null when not said.</summary>
    public ShelterAnimals? Animals { get; init; }
}
