using Dewstone.Model.Description;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Strength;

/// <summary>Compressive strength of a cell at 28 equivalent days from the water it got, by the mix's rule.</summary>
internal sealed class CellStrength
{
    private readonly StrengthRule rule;
    private readonly double porosity, cementVolume, ratioPerContent, airPerVolume, reached, measured;

    /// <summary>Prepares a rule.</summary>
    /// <param name="law">The rule and its cubes.</param>
    /// <param name="mix">The mix, for the volume of its binders.</param>
    /// <param name="moisture">Binder, liquid and pores.</param>
    /// <param name="activationKelvin">Activation energy over the gas constant, for cubes cured at another temperature, K.</param>
    public CellStrength(StrengthLaw law, DryMix mix, MoistureResult moisture, double activationKelvin)
        : this(law, mix, moisture.BinderKilogramsPerCubicMetre, moisture.LiquidKilogramsPerCubicMetre, moisture.Porosity, activationKelvin)
    {
    }

    /// <summary>Prepares a rule for a bed that nothing was wetted in.</summary>
    /// <param name="law">The rule and its cubes.</param>
    /// <param name="mix">The mix, for the volume of its binders.</param>
    /// <param name="binder">Binder mass per volume of bed, kg/m3.</param>
    /// <param name="liquid">Liquid density, kg/m3.</param>
    /// <param name="pores">Pore volume per volume of bed, 1.</param>
    /// <param name="activationKelvin">Activation energy over the gas constant, for cubes cured at another temperature, K.</param>
    public CellStrength(StrengthLaw law, DryMix mix, double binder, double liquid, double pores, double activationKelvin)
    {
        rule = law.Measured.Count > 0 ? StrengthRule.Measured : law.Rule;
        porosity = pores;
        ratioPerContent = liquid / binder;
        airPerVolume = 1000.0 / binder;
        double bed = binder / mix.BinderShare;
        cementVolume = bed * mix.Solids.Where(solid => solid.IsBinder).Sum(solid => solid.Share / solid.GrainDensity.KilogramsPerCubicMetre);
        reached = Hydration.Reached(28.0 * 24.0);
        measured = law.Measured.Count > 0 ? law.Measured.Average(cube => At28Days(cube, AgeFactor.Of(law.CementClass), activationKelvin)) : 0.0;
    }

    /// <summary>Rule in force: cubes override what else is named.</summary>
    public StrengthRule Rule => rule;

    /// <summary>The strength.</summary>
    /// <param name="content">Volumetric water content, 1.</param>
    /// <returns>Compressive strength at 28 equivalent days, Pa.</returns>
    public double Pascals(double content)
    {
        double ratio = content * ratioPerContent, air = Math.Max(0.0, porosity - content);
        return rule switch
        {
            StrengthRule.Measured => measured,
            StrengthRule.Feret => FeretLaw.Pascals(cementVolume, content, air),
            StrengthRule.HandbookCurve => HandbookCurve.Pascals(ratio),
            _ => GelSpaceRatio.Pascals(GelSpaceRatio.Of(
                reached * Estimation.HydratedPaste.UltimateHydration(ratio), content * airPerVolume, rule == StrengthRule.GelSpace ? 0.0 : air * airPerVolume)),
        };
    }

    private static double At28Days(MeasuredStrength cube, AgeFactor factor, double activationKelvin) =>
        cube.Strength.Pascals / factor.At(cube.Age.Seconds / 86400.0 * Maturity.Rate(cube.Curing.Celsius, activationKelvin));
}
