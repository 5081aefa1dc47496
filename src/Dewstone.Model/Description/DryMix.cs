using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>The dry mix of the bed and how it takes water.</summary>
public sealed record DryMix
{
    /// <summary>Name for people.</summary>
    public required string Name { get; init; }

    /// <summary>Where its figures come from.</summary>
    public required MixOrigin Origin { get; init; }

    /// <summary>Currency of all prices, three letters.</summary>
    public required string Currency { get; init; }

    /// <summary>Solids; shares sum to 1, at least one is a binder.</summary>
    public required IReadOnlyList<Constituent> Solids { get; init; }

    /// <summary>Density of the bed as spread.</summary>
    public required Density LooseDensity { get; init; }

    /// <summary>What the needles inject.</summary>
    public required Liquid Liquid { get; init; }

    /// <summary>Law of moisture diffusivity.</summary>
    public required WettingLaw Wetting { get; init; }

    /// <summary>When and where it sets.</summary>
    public required Hardening Hardening { get; init; }

    /// <summary>How strength follows; null when not said.</summary>
    public StrengthLaw? Strength { get; init; }

    /// <summary>How often loose mix may be spread again; null when not said.</summary>
    public int? ReuseLimit { get; init; }

    /// <summary>Spreads for trials; null when not said.</summary>
    public MixUncertainty? Uncertainty { get; init; }

    /// <summary>Mass share of all binders, 0 to 1.</summary>
    public double BinderShare => Solids.Where(s => s.IsBinder).Sum(s => s.Share);

    /// <summary>Mass share of recycled material, 0 to 1.</summary>
    public double RecycledShare => Solids.Sum(s => s.Share * s.RecycledShare);

    /// <summary>Binder mass per volume of bed, kg/m3, at a loose density.</summary>
    /// <param name="looseDensity">Density of the bed as spread.</param>
    /// <returns>Loose density times binder share.</returns>
    public double BinderKilogramsPerCubicMetre(Density looseDensity) => looseDensity.KilogramsPerCubicMetre * BinderShare;

    /// <summary>Pore volume per volume of bed, 1: one minus the sum of (share x loose density / grain density).</summary>
    /// <param name="looseDensity">Density of the bed as spread.</param>
    /// <returns>Porosity; not positive when the density is above that of the grains.</returns>
    public double Porosity(Density looseDensity) =>
        1.0 - looseDensity.KilogramsPerCubicMetre * Solids.Sum(s => s.Share / s.GrainDensity.KilogramsPerCubicMetre);
}
