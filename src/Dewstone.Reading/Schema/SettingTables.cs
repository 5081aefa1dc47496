using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Binding;
using Dewstone.Reading.Quantities;

namespace Dewstone.Reading.Schema;

/// <summary>Key tables of how a mix takes water, sets and gains strength.</summary>
internal static class SettingTables
{
    private static readonly KeyOf<string> Law =
        Key.Must("law", new WordForm<string>(("power", "power"), ("exponential", "exponential")), "law of diffusivity against saturation");

    private static readonly KeyOf<Diffusivity> AtSaturation = Key.Must("diffusivity",
        new QuantityForm<Diffusivity>(QuantityKinds.Diffusivity, "1e-12 m2/s", "1 m2/s", "3.2e-6 m2/s", value => new Diffusivity(value)),
            "value at saturation");

    private static readonly KeyOf<int> Exponent = Key.Must("exponent", Forms.Whole(1, 12, "4"), "exponent of the law");

    private static readonly KeyOf<double> Residual =
        Key.May("residual", new NumberForm(0, 0.5, "0"), "volumetric water content below which nothing moves", fallback: "0");

    /// <summary>Wetting law.</summary>
    public static readonly TableForm<WettingLaw> Wetting = new("a wetting law", [Law, AtSaturation, Exponent, Residual],
        bound => bound.Get(Law) == "power"
            ? new PowerLaw { AtSaturation = bound.Get(AtSaturation), Exponent = bound.Get(Exponent), Residual = bound.Get(Residual) }
            : new ExponentialLaw
            {
                AtSaturation = bound.Get(AtSaturation),
                Exponent = bound.Get(Exponent),
                Residual = bound.Get(Residual),
            });

    private static readonly KeyOf<double> WaterCement =
        Key.Must("water_cement", new NumberForm(0.01, 2, "0.22"), "least water/cement by mass that sets");

    private static readonly KeyOf<Duration> Window =
        Key.Must("window", Forms.Time("1 s", "7 d", "600 s"), "time from the first dose of a layer after which its water no longer moves");

    private static readonly KeyOf<Temperature> At = Key.May("at", Forms.Temperature("-5 degC", "60 degC", "20 degC"),
        "temperature the window is for", fallback: "20 degC", starter: true);

    private static readonly KeyOf<double> Activation = Key.May("activation", Forms.Plain(QuantityKinds.Kelvins, "0 K", "20000 K", "5000 K"),
        "activation energy over the gas constant, by which the window scales with bed temperature", fallback: "5000 K", starter: true);

    /// <summary>Hardening.</summary>
    public static readonly TableForm<Hardening> Hardening = new("hardening", [WaterCement, Window, At, Activation],
        bound => new Hardening
        {
            WaterCement = bound.Get(WaterCement),
            Window = bound.Get(Window),
            At = bound.Get(At),
            ActivationKelvin = bound.Get(Activation),
        });

    private static readonly KeyOf<StrengthRule> StrengthBy = Key.Must("law",
        new WordForm<StrengthRule>(
            ("gel_space_with_air", StrengthRule.GelSpaceWithAir), ("feret", StrengthRule.Feret), ("gel_space", StrengthRule.GelSpace),
            ("handbook_curve", StrengthRule.HandbookCurve)),
        "gel/space ratio with the air left in the bed, Feret's rule, or, of a compacted bed, the rules without air");

    private static readonly KeyOf<IReadOnlyList<MeasuredStrength>> Measured = Key.Must("measured",
        new ListForm<MeasuredStrength>(
            new RowForm<MeasuredStrength>("a measurement [age, curing temperature, strength]", "[7 d, 20 degC, 12.4 MPa]",
                v => new MeasuredStrength((Duration)v[0], (Temperature)v[1], (Pressure)v[2]),
                Forms.Time("1 h", "10 yr", "7 d"), Forms.Temperature("-5 degC", "90 degC", "20 degC"),
                    Forms.Pressure("0 MPa", "200 MPa", "12.4 MPa")),
            1, "measurements"),
        "cubes cut from the same bed");

    private static readonly KeyOf<string> CementClass =
        Key.May("class", new WordForm<string>(("N", "N"), ("S", "S"), ("R", "R")), "cement class: slow, normal or rapid", fallback: "N",
            starter: true);

    private static readonly KeyOf<bool> Compacted =
        Key.May("compacted", Forms.Flag, "whether the bed is compacted so that next to no air stays", fallback: "false");

    /// <summary>Strength law.</summary>
    public static readonly TableForm<StrengthLaw> Strength = new("a strength law", [StrengthBy, Measured, CementClass, Compacted],
        bound => new StrengthLaw
        {
            Rule = bound.Stands(StrengthBy) ? bound.Get(StrengthBy) : StrengthRule.Measured,
            CementClass = bound.Get(CementClass),
            Compacted = bound.Get(Compacted),
            Measured = bound.MaybeOf(Measured) ?? [],
        },
        ways: [Way.By(StrengthBy), Way.By(Measured)]);

    private static readonly KeyOf<double> OfDiffusivity = Key.May("diffusivity", Forms.Share, "of the diffusivity", "20 %", "0 %");
    private static readonly KeyOf<double> OfThreshold = Key.May("threshold", Forms.Share, "of the water/cement that sets", "5 %", "0 %");
    private static readonly KeyOf<double> OfLooseDensity = Key.May("loose_density", Forms.Share, "of the loose density", "2 %", "0 %");

    private static readonly KeyOf<double> DiffusivityThreshold =
        Key.May("diffusivity_threshold", new NumberForm(-1, 1, "0.4"), "of diffusivity and threshold", fallback: "0");

    private static readonly KeyOf<double> DiffusivityDensity =
        Key.May("diffusivity_loose_density", new NumberForm(-1, 1, "-0.9"), "of diffusivity and loose density", fallback: "0");

    private static readonly KeyOf<double> ThresholdDensity =
        Key.May("threshold_loose_density", new NumberForm(-1, 1, "-0.2"), "of threshold and loose density", fallback: "0");

    private static readonly TableForm<MixCorrelation> Correlation = new("correlations", [DiffusivityThreshold, DiffusivityDensity, ThresholdDensity],
        bound => new MixCorrelation(bound.Get(DiffusivityThreshold), bound.Get(DiffusivityDensity), bound.Get(ThresholdDensity)));

    private static readonly KeyOf<MixCorrelation> Together =
        Key.May("correlation", Correlation, "how the errors of two figures go together, as a calibration finds it");

    /// <summary>Uncertainty.</summary>
    public static readonly TableForm<MixUncertainty> Uncertainty = new("an uncertainty", [OfDiffusivity, OfThreshold, OfLooseDensity, Together],
        bound => new MixUncertainty(bound.Get(OfDiffusivity), bound.Get(OfThreshold), bound.Get(OfLooseDensity)) { Correlation = bound.MaybeOf(Together) },
        bound =>
        {
            if (bound.Has(Together, out MixCorrelation? correlation) && correlation.Factor() is null)
            {
                bound.Report(MeasurementFindings.Contradiction, Together.Name, "no three figures can have these correlations together",
                    "copy all three from one calibration");
            }
        });
}
