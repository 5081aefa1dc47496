namespace Dewstone.Compute.Strength;

/// <summary>Heat of cement, and how warm a body gets that loses none of it.</summary>
/// <remarks>
/// H = 500 C3S + 260 C2S + 866 C3A + 420 C4AF + 624 SO3 + 1186 free CaO + 850 MgO, J/g, shares by mass. Rise = cement x hydrated x H / heat capacity. An upper bound: a block
/// loses heat from the first hour on. Source: the sum as used by Schindler and Folliard, 2005, "Heat of hydration models for cementitious materials", ACI Materials
/// Journal 102 (from memory).
/// </remarks>
public static class HydrationHeat
{
    /// <summary>
    /// Heat of a plain Portland cement of 55 % C3S, 18 % C2S, 10 % C3A, 8 % C4AF, 2.7 % SO3, 1 % free CaO and 2 % MgO, J/kg: taken for every binder, since a mix does not say
    /// what its clinker is.
    /// </summary>
    public static double Plain { get; } = 1000.0 * Joules(0.55, 0.18, 0.10, 0.08, 0.027, 0.01, 0.02);

    /// <summary>Heat capacity of dry mix, J/(kg K); common figure of mineral grains, no source.</summary>
    public const double OfSolids = 800.0;

    /// <summary>Heat capacity of water, J/(kg K); common figure.</summary>
    public const double OfWater = 4180.0;

    /// <summary>Heat of a cement that hydrates wholly.</summary>
    /// <param name="c3s">Share of C3S, 0 to 1.</param>
    /// <param name="c2s">Share of C2S.</param>
    /// <param name="c3a">Share of C3A.</param>
    /// <param name="c4af">Share of C4AF.</param>
    /// <param name="so3">Share of SO3.</param>
    /// <param name="freeLime">Share of free CaO.</param>
    /// <param name="magnesia">Share of MgO.</param>
    /// <returns>J/g.</returns>
    public static double Joules(double c3s, double c2s, double c3a, double c4af, double so3, double freeLime, double magnesia) =>
        500.0 * c3s + 260.0 * c2s + 866.0 * c3a + 420.0 * c4af + 624.0 * so3 + 1186.0 * freeLime + 850.0 * magnesia;

    /// <summary>Rise of temperature without any loss.</summary>
    /// <param name="cement">Cement, kg/m3.</param>
    /// <param name="hydrated">Share of it hydrated, 0 to 1.</param>
    /// <param name="joulesPerKilogram">Its heat, J/kg.</param>
    /// <param name="heatCapacity">Heat capacity of the body, J/(m3 K).</param>
    /// <returns>K.</returns>
    public static double AdiabaticRise(double cement, double hydrated, double joulesPerKilogram, double heatCapacity) => cement * hydrated * joulesPerKilogram / heatCapacity;
}
