using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Tests.Wetting;

/// <summary>
/// The mix of the wetting checks: 1700 kg/m3 as spread, a quarter of it cement (3150 kg/m3), the rest sand (2650 kg/m3), so that the pores
/// take 1 - 1700 (0.25/3150 + 0.75/2650) = 0.383947 of the bed; D = 3.2e-6 m2/s s^4; sets at water/cement 0.22 or more. Diffusivity and
/// threshold are fitted to a ball of common practice (35 mL make about 74 mm), not measured: no published value for a loose dry bed is known.
/// </summary>
internal static class ReferenceMix
{
    public const double Pitch = 0.0508;

    public const double BinderKilogramsPerCubicMetre = 425.0;

    public static double Porosity { get; } = 1.0 - 1700.0 * (0.25 / 3150.0 + 0.75 / 2650.0);

    /// <summary>The bed, with a window of 600 s unless said.</summary>
    public static BedProperties Bed(double windowSeconds = 600.0, int exponent = 4, double diffusivity = 3.2e-6) => new()
    {
        Porosity = Porosity,
        BinderKilogramsPerCubicMetre = BinderKilogramsPerCubicMetre,
        LiquidKilogramsPerCubicMetre = 1000.0,
        ThresholdWaterCement = 0.22,
        WindowSeconds = windowSeconds,
        Law = new PowerLaw { AtSaturation = new Diffusivity(diffusivity), Exponent = exponent },
    };
}
