using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>One solid of a dry mix.</summary>
public sealed record Constituent
{
    /// <summary>Name for people.</summary>
    public required string Name { get; init; }

    /// <summary>Share by mass of the dry mix, 0 to 1.</summary>
    public required double Share { get; init; }

    /// <summary>Density of its grains.</summary>
    public required Density GrainDensity { get; init; }

    /// <summary>Whether it counts as cement in water/cement.</summary>
    public bool IsBinder { get; init; }

    /// <summary>Carbon dioxide equivalent, kg per kg.</summary>
    public double CarbonPerKilogram { get; init; }

    /// <summary>Price per kilogram, in the mix's currency.</summary>
    public double PricePerKilogram { get; init; }

    /// <summary>Share of it that is recycled, 0 to 1.</summary>
    public double RecycledShare { get; init; }
}
