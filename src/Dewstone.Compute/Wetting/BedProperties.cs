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

    /// <summary>
    /// The power of the effective saturation that is nearly linear across a wetting front, for placing the hardened surface between cells.
    /// The front is a cliff: placed by the content itself, the surface of a ball of 74 mm across came out up to 4 mm too far in at 6 cells
    /// a voxel (reference run of an independent prototype of the same model), placed by the power m - 1 within 0.4 mm at 8 cells a voxel.
    /// </summary>
    /// <remarks>
    /// Power law: its exponent less 1. Exponential law: its slope d ln D / d ln s at the threshold, exponent x s, rounded, less 1. At least 1.
    /// </remarks>
    public int SurfaceExponent
    {
        get
        {
            double saturation = (ThresholdContent - Law.Residual) / (Porosity - Law.Residual);
            double slope = Law is PowerLaw ? Law.Exponent : Math.Floor(Law.Exponent * Math.Clamp(saturation, 0.0, 1.0) + 0.5);
            return Math.Max(1, (int)slope - 1);
        }
    }

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
