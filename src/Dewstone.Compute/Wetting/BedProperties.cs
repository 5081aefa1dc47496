using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Wetting;

/// <summary>What the wetting needs to know of the loose mix as it lies spread tonight.</summary>
public sealed record BedProperties
{
    /// <summary>Pore volume per volume of bed, 1; the most water a cell can hold. Above the law's residual content, below 1.</summary>
    public required double Porosity { get; init; }

    /// <summary>Binder mass per volume of bed, kg/m3.</summary>
    public required double BinderKilogramsPerCubicMetre { get; init; }

    /// <summary>Density of the liquid, kg/m3.</summary>
    public required double LiquidKilogramsPerCubicMetre { get; init; }

    /// <summary>Least water/cement by mass that sets, 1.</summary>
    public required double ThresholdWaterCement { get; init; }

    /// <summary>Time from a layer's first dose after which its water no longer moves, s, at tonight's bed temperature.</summary>
    public required double WindowSeconds { get; init; }

    /// <summary>Law of moisture diffusivity, with its residual content.</summary>
    public required WettingLaw Law { get; init; }

    /// <summary>Volumetric water content at which the mix sets, 1.</summary>
    public double ThresholdContent => ThresholdWaterCement * BinderKilogramsPerCubicMetre / LiquidKilogramsPerCubicMetre;

    /// <summary>Binds a mix to the density and temperature of the bed it lies in.</summary>
    /// <remarks>
    /// The window scales by the equivalent-age form of ASTM C1074 (Standard Practice for Estimating Concrete Strength by the Maturity Method;
    /// form from memory): window = window(reference) / exp(-Q (1/T - 1/T reference)), T in kelvin, Q = activation energy over the gas constant.
    /// A colder bed stays open longer.
    /// </remarks>
    /// <param name="mix">The mix.</param>
    /// <param name="loose">Density of the bed as spread.</param>
    /// <param name="bed">Temperature of the bed.</param>
    /// <returns>The properties.</returns>
    public static BedProperties From(DryMix mix, Density loose, Temperature bed)
    {
        ArgumentNullException.ThrowIfNull(mix);
        Hardening hardening = mix.Hardening;
        double rate = Elementary.Exp(-hardening.ActivationKelvin * (1.0 / bed.Kelvin - 1.0 / hardening.At.Kelvin));
        return new BedProperties
        {
            Porosity = mix.Porosity(loose),
            BinderKilogramsPerCubicMetre = mix.BinderKilogramsPerCubicMetre(loose),
            LiquidKilogramsPerCubicMetre = mix.Liquid.Density.KilogramsPerCubicMetre,
            ThresholdWaterCement = hardening.WaterCement,
            WindowSeconds = hardening.Window.Seconds / rate,
            Law = mix.Wetting,
        };
    }
}
