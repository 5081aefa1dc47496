using Dewstone.Model.Description;

namespace Dewstone.Compute.Strength;

/// <summary>Ages to plan with before anything is wetted: when units of a mix may be dug out and lifted if all of them got one water/cement.</summary>
/// <remarks>
/// As <see cref="StrengthCheck"/> judges a compiled unit, but from the strength at one water/cement instead of the mean over its cells, and without the tension when it hangs: the
/// compiled unit's own ages win, and may be later.
/// </remarks>
/// <param name="MeanPascals">Strength at 28 equivalent days, Pa.</param>
/// <param name="LiftDays">Days to the strength at which units are lifted; null when it never comes.</param>
public readonly record struct PlannedAges(double MeanPascals, double? LiftDays)
{
    /// <summary>The ages.</summary>
    /// <param name="job">Mix, density and curing temperature.</param>
    /// <param name="waterCement">Water/cement by mass, 1.</param>
    /// <returns>The ages.</returns>
    public static PlannedAges Of(JobDescription job, double waterCement)
    {
        ArgumentNullException.ThrowIfNull(job);
        StrengthLaw law = job.Mix.Strength ?? new StrengthLaw();
        double binder = job.Mix.BinderKilogramsPerCubicMetre(job.LooseDensity), liquid = job.Mix.Liquid.Density.KilogramsPerCubicMetre;
        CellStrength strength = new(law, job.Mix, binder, liquid, job.Mix.Porosity(job.LooseDensity), job.Mix.Hardening.ActivationKelvin);
        double mean = strength.Pascals(waterCement * binder / liquid);
        AgeFactor factor = AgeFactor.Of(law.CementClass);
        double rate = Maturity.Rate(job.CuringTemperature.Celsius, job.Mix.Hardening.ActivationKelvin);
        return new PlannedAges(
            mean,
            mean > 0.0 ? factor.DaysTo(StrengthCheck.LiftPascals / mean) / rate : null);
    }
}
