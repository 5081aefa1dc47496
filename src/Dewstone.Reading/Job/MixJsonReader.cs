using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Reading.Job;

/// <summary>Reads a dry mix and what was measured on the night from a job core.</summary>
internal static class MixJsonReader
{
    public static DryMix Mix(JsonPlace json) => new()
    {
        Name = json.Text("name"),
        Origin = new MixOrigin(
            json["origin"].Word("kind", ("assumed", MixOriginKind.Assumed), ("calibration", MixOriginKind.Calibration), ("handbook", MixOriginKind.Handbook)),
            json["origin"].Text("title")),
        Currency = json.Text("currency"),
        Solids = json.Items("solids", solid => new Constituent
        {
            Name = solid.Text("name"),
            Share = solid.Number("share"),
            GrainDensity = new Density(solid.Number("grain_density_kg_m3")),
            IsBinder = solid.Flag("binder"),
            CarbonPerKilogram = solid.Number("co2_kg_kg"),
            PricePerKilogram = solid.Number("price_per_kg"),
            RecycledShare = solid.Number("recycled_share"),
        }),
        LooseDensity = new Density(json.Number("loose_density_kg_m3")),
        Liquid = Liquid(json["liquid"]),
        Wetting = Law(json["wetting"]),
        Hardening = Hardening(json["hardening"]),
        Strength = json.Optional("strength", Strength),
        ReuseLimit = json.Has("reuse_limit") ? json.Whole("reuse_limit") : null,
        Uncertainty = json.Optional(
            "uncertainty", spread => new MixUncertainty(spread.Number("diffusivity"), spread.Number("threshold"), spread.Number("loose_density"))
            {
                Correlation = spread.Has("correlation") ? Correlation(spread["correlation"]) : null,
            }),
    };

    public static Tonight Tonight(JsonPlace json) => new()
    {
        MixBatch = json.Text("mix_batch"),
        LooseDensity = json.OptionalNumber("loose_density_kg_m3") is { } density ? new Density(density) : null,
        BedTemperature = Celsius(json, "bed_temperature_degc"),
        LiquidTemperature = Celsius(json, "liquid_temperature_degc"),
        CuringTemperature = Celsius(json, "curing_temperature_degc"),
    };

    private static MixCorrelation Correlation(JsonPlace json) =>
        new(json.Number("diffusivity_threshold"), json.Number("diffusivity_loose_density"), json.Number("threshold_loose_density"));

    private static Liquid Liquid(JsonPlace json) => new()
    {
        Density = new Density(json.Number("density_kg_m3")),
        PricePerLitre = json.Number("price_per_litre"),
        Additives = json.Items("additives", additive => new Additive(additive.Text("name"), additive.Number("grams_per_litre"))),
    };

    private static WettingLaw Law(JsonPlace json)
    {
        Diffusivity diffusivity = new(json.Number("diffusivity_m2_s"));
        int exponent = json.Whole("exponent");
        double residual = json.Number("residual");
        return json.Word("law", ("power", true), ("exponential", false))
            ? new PowerLaw { AtSaturation = diffusivity, Exponent = exponent, Residual = residual }
            : new ExponentialLaw { AtSaturation = diffusivity, Exponent = exponent, Residual = residual };
    }

    private static Hardening Hardening(JsonPlace json) => new()
    {
        WaterCement = json.Number("water_cement"),
        Window = new Duration(json.Number("window_s")),
        At = new Temperature(json.Number("at_degc")),
        ActivationKelvin = json.Number("activation_k"),
    };

    private static StrengthLaw Strength(JsonPlace json) => new()
    {
        Rule = json.Has("law")
            ? json.Word("law", ("feret", StrengthRule.Feret), ("gel_space", StrengthRule.GelSpace), ("handbook_curve", StrengthRule.HandbookCurve))
            : json.Flag("gel_space_with_air") ? StrengthRule.GelSpaceWithAir : StrengthRule.Measured,
        CementClass = json.Text("class"),
        Compacted = json.Has("compacted") && json.Flag("compacted"),
        Measured = json.Items("measured", cube => new MeasuredStrength(
            new Duration(cube.Number("age_s")), new Temperature(cube.Number("curing_degc")), new Pressure(cube.Number("strength_pa")))),
    };

    private static Temperature? Celsius(JsonPlace json, string name) => json.OptionalNumber(name) is { } celsius ? new Temperature(celsius) : null;
}
