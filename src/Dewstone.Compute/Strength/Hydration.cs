using Dewstone.Compute.Estimation;

namespace Dewstone.Compute.Strength;

/// <summary>Share of the cement hydrated at an age.</summary>
/// <remarks>
/// a(t) = au exp(-(tau / t)^b) with the greatest share au of <see cref="HydratedPaste.UltimateHydration"/>. Time constant 14 h and shape 0.9 stand for a plain Portland
/// cement. Source: Schindler and Folliard, 2005, "Heat of hydration models for cementitious materials", ACI Materials Journal 102 (from memory).
/// </remarks>
public static class Hydration
{
    /// <summary>Time constant tau, equivalent hours.</summary>
    public const double Hours = 14.0;

    /// <summary>Shape b, 1.</summary>
    public const double Shape = 0.9;

    /// <summary>Share of the greatest hydration reached.</summary>
    /// <param name="equivalentHours">Equivalent age, h, above 0.</param>
    /// <param name="hours">Time constant, h.</param>
    /// <param name="shape">Shape, 1.</param>
    /// <returns>0 to 1.</returns>
    public static double Reached(double equivalentHours, double hours = Hours, double shape = Shape) => Math.Exp(-Math.Pow(hours / equivalentHours, shape));

    /// <summary>Share of the cement hydrated.</summary>
    /// <param name="waterCement">Water/cement by mass, 1.</param>
    /// <param name="equivalentHours">Equivalent age, h, above 0.</param>
    /// <returns>0 to 1.</returns>
    public static double Of(double waterCement, double equivalentHours) => HydratedPaste.UltimateHydration(waterCement) * Reached(equivalentHours);
}
