using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Estimation;

/// <summary>Masses of the hardened unit in its states, kg.</summary>
/// <param name="FreshKilograms">Dry mix and all water in the hardened solid.</param>
/// <param name="DryKilograms">Dry mix and chemically bound water.</param>
/// <param name="SaturatedKilograms">Dry mass with all pores full of sea water.</param>
/// <param name="SubmergedKilograms">Apparent mass in sea water, pores full.</param>
public sealed record UnitMasses(double FreshKilograms, double DryKilograms, double SaturatedKilograms, double SubmergedKilograms)
{
    /// <summary>Works out the masses; see <see cref="Estimator"/> and <see cref="HydratedPaste"/> for the equations.</summary>
    /// <param name="job">Mix, tonight and site.</param>
    /// <param name="solid">Figures of the predicted solid.</param>
    /// <returns>The masses.</returns>
    public static UnitMasses Of(JobDescription job, SolidSummary solid)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(solid);
        double dryMix = solid.HardenedCubicMetres * job.LooseDensity.KilogramsPerCubicMetre;
        double hydrated = dryMix * job.Mix.BinderShare * HydratedPaste.UltimateHydration(solid.MeanWaterCement);
        double dry = dryMix + HydratedPaste.BoundWater * hydrated;
        double grains = solid.HardenedCubicMetres * (1.0 - job.Mix.Porosity(job.LooseDensity));
        // Lean, dense beds may have no room for all hydrates; the bulk volume is then full.
        double solids = Math.Min(solid.HardenedCubicMetres, grains + HydratedPaste.SolidsGrowthCubicMetres(hydrated));
        double seaWater = job.Site is { } site
            ? SeaWater.KilogramsPerCubicMetre(site.Water.Salinity, site.Water.Temperature.Celsius)
            : SeaWater.UsualKilogramsPerCubicMetre;
        double saturated = dry + seaWater * (solid.HardenedCubicMetres - solids);
        return new UnitMasses(
            dryMix + solid.WaterInHardenedCubicMetres * job.Mix.Liquid.Density.KilogramsPerCubicMetre,
            dry,
            saturated,
            Math.Max(0.0, saturated - seaWater * solid.HardenedCubicMetres));
    }
}
