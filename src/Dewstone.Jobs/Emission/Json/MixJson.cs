using System.Text.Json;
using Dewstone.Model.Description;

namespace Dewstone.Jobs.Emission.Json;

/// <summary>A dry mix and what was measured on the night, as JSON in SI.</summary>
internal static class MixJson
{
    /// <summary>Writes the members of a mix into the object that is open.</summary>
    public static void Write(Utf8JsonWriter json, DryMix mix)
    {
        json.WriteString("name", mix.Name);
        json.Object("origin", () => Write(json, mix.Origin));
        json.WriteString("currency", mix.Currency);
        json.Objects("solids", mix.Solids, solid =>
        {
            json.WriteString("name", solid.Name);
            json.Number("share", solid.Share);
            json.Number("grain_density_kg_m3", solid.GrainDensity.KilogramsPerCubicMetre);
            json.WriteBoolean("binder", solid.IsBinder);
            json.Number("co2_kg_kg", solid.CarbonPerKilogram);
            json.Number("price_per_kg", solid.PricePerKilogram);
            json.Number("recycled_share", solid.RecycledShare);
        });
        json.Number("loose_density_kg_m3", mix.LooseDensity.KilogramsPerCubicMetre);
        json.Object("liquid", () =>
        {
            json.Number("density_kg_m3", mix.Liquid.Density.KilogramsPerCubicMetre);
            json.Number("price_per_litre", mix.Liquid.PricePerLitre);
            json.Objects("additives", mix.Liquid.Additives, additive =>
            {
                json.WriteString("name", additive.Name);
                json.Number("grams_per_litre", additive.GramsPerLitre);
            });
        });
        json.Object("wetting", () =>
        {
            json.WriteString("law", LawName(mix.Wetting));
            json.Number("diffusivity_m2_s", mix.Wetting.AtSaturation.SquareMetresPerSecond);
            json.WriteNumber("exponent", mix.Wetting.Exponent);
            json.Number("residual", mix.Wetting.Residual);
        });
        json.Object("hardening", () =>
        {
            json.Number("water_cement", mix.Hardening.WaterCement);
            json.Number("window_s", mix.Hardening.Window.Seconds);
            json.Number("at_degc", mix.Hardening.At.Celsius);
            json.Number("activation_k", mix.Hardening.ActivationKelvin);
        });
        json.ObjectOrNull("strength", mix.Strength, strength => Write(json, strength));
        json.Number("reuse_limit", mix.ReuseLimit);
        json.ObjectOrNull("uncertainty", mix.Uncertainty, uncertainty =>
        {
            json.Number("diffusivity", uncertainty.Diffusivity);
            json.Number("threshold", uncertainty.Threshold);
            json.Number("loose_density", uncertainty.LooseDensity);
            if (uncertainty.Correlation is { } correlation)
            {
                json.Object("correlation", () =>
                {
                    json.Number("diffusivity_threshold", correlation.DiffusivityThreshold);
                    json.Number("diffusivity_loose_density", correlation.DiffusivityDensity);
                    json.Number("threshold_loose_density", correlation.ThresholdDensity);
                });
            }
        });
    }

    /// <summary>Writes the members of the night into the object that is open.</summary>
    public static void Write(Utf8JsonWriter json, Tonight tonight)
    {
        json.WriteString("mix_batch", tonight.MixBatch);
        json.Number("loose_density_kg_m3", tonight.LooseDensity?.KilogramsPerCubicMetre);
        json.Number("bed_temperature_degc", tonight.BedTemperature?.Celsius);
        json.Number("liquid_temperature_degc", tonight.LiquidTemperature?.Celsius);
        json.Number("curing_temperature_degc", tonight.CuringTemperature?.Celsius);
    }

    /// <summary>Name of a law of diffusivity, as description files write it.</summary>
    public static string LawName(WettingLaw law) => law switch
    {
        PowerLaw => "power",
        ExponentialLaw => "exponential",
        _ => throw new NotSupportedException($"The job core has no name for {law.GetType().Name}."),
    };

    private static void Write(Utf8JsonWriter json, MixOrigin origin)
    {
        json.WriteString("kind", origin.Kind switch
        {
            MixOriginKind.Calibration => "calibration",
            MixOriginKind.Handbook => "handbook",
            _ => "assumed",
        });

        // The core holds no file names, and a calibration is named by its file.
        json.WriteString("title", origin.Kind == MixOriginKind.Handbook ? origin.Reference : "");
    }

    private static void Write(Utf8JsonWriter json, StrengthLaw strength)
    {
        json.WriteBoolean("gel_space_with_air", strength.Rule == StrengthRule.GelSpaceWithAir);
        if (strength.Rule is not (StrengthRule.GelSpaceWithAir or StrengthRule.Measured))
        {
            json.WriteString("law", StrengthJson.Word(strength.Rule));
        }

        json.WriteString("class", strength.CementClass);
        if (strength.Compacted)
        {
            json.WriteBoolean("compacted", true);
        }

        json.Objects("measured", strength.Measured, cube =>
        {
            json.Number("age_s", cube.Age.Seconds);
            json.Number("curing_degc", cube.Curing.Celsius);
            json.Number("strength_pa", cube.Strength.Pascals);
        });
    }
}
