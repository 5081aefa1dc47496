using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Binding;
using Dewstone.Reading.Quantities;

namespace Dewstone.Reading.Schema;

/// <summary>Key table of the seabed: sand or clay.</summary>
internal static class SeabedTable
{
    private static readonly KeyOf<SoilKind> Soil =
        Key.Must("soil", new WordForm<SoilKind>(("sand", SoilKind.Sand), ("clay", SoilKind.Clay)), "kind of soil");
    private static readonly KeyOf<double> Friction =
        Key.Must("friction", new NumberForm(0, 2, "0.55"), "friction coefficient between unit and seabed");
    private static readonly KeyOf<Angle> FrictionAngle =
        Key.Must("friction_angle", Forms.AngleOf("0 deg", "50 deg", "30 deg"), "angle of internal friction");

    private static readonly KeyOf<Pressure> UndrainedStrength =
        Key.Must("undrained_strength", Forms.Pressure("0.1 kPa", "1 MPa", "5 kPa"), "undrained shear strength");

    private static readonly KeyOf<UnitWeight> EffectiveWeight = Key.Must("effective_weight",
        new QuantityForm<UnitWeight>(QuantityKinds.UnitWeight, "1 kN/m3", "20 kN/m3", "8.5 kN/m3", value => new UnitWeight(value)),
            "effective weight of the soil under water");

    private static readonly KeyOf<Pressure> Stiffness =
        Key.May("stiffness", Forms.Pressure("0.1 MPa", "1000 MPa", "10 MPa"), "stiffness (Young's modulus) of the soil under slow load; left out, settlement is not told");

    private static readonly KeyOf<Length> Grain = Key.May("grain", Forms.Length("1 um", "1 m", "0.3 mm"), "median grain size");
    private static readonly KeyOf<Angle> Slope =
        Key.May("slope", Forms.AngleOf("0 deg", "45 deg", "0 deg"), "slope from the horizontal", fallback: "0 deg", starter: true);

    private static readonly KeyOf<BearingMethod> Method =
        Key.May("bearing", new WordForm<BearingMethod>(
            ("least", BearingMethod.Least), ("terzaghi", BearingMethod.Terzaghi), ("meyerhof", BearingMethod.Meyerhof), ("vesic", BearingMethod.Vesic)),
            "method by which it is judged whether sand bears the unit", fallback: "least");

    /// <summary>Seabed.</summary>
    public static readonly TableForm<SeabedSoil> Table =
        new("a seabed", [Soil, Friction, FrictionAngle, UndrainedStrength, EffectiveWeight, Stiffness, Grain, Slope, Method],
        bound => new SeabedSoil
        {
            Soil = bound.Get(Soil),
            Friction = bound.Get(Friction),
            FrictionAngle = bound.Maybe(FrictionAngle),
            UndrainedStrength = bound.Maybe(UndrainedStrength),
            EffectiveWeight = bound.Get(EffectiveWeight),
            Stiffness = bound.Maybe(Stiffness),
            Grain = bound.Maybe(Grain),
            Slope = bound.Get(Slope),
            Method = bound.Get(Method),
        },
        ways: [Way.When(Soil, "sand", FrictionAngle), Way.When(Soil, "clay", UndrainedStrength)]);
}
