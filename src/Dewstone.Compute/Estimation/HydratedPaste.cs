namespace Dewstone.Compute.Estimation;

/// <summary>What hydration makes of the cement: water bound for good, and the growth of the solids.</summary>
/// <remarks>
/// Assumes Portland cement that hydrates to its limit in the water it was given; slag, ash and other binders are counted as cement, for which these
/// constants are rough. Equations: bound water = 0.23 kg a kg of cement hydrated; chemical shrinkage 0.064 mL a g, so the solids grow by
/// 0.23 / 1000 - 0.064e-3 = 0.166e-3 m3 a kg of cement hydrated (Powers and Brownyard constants as given by Jensen and Hansen, 2001, "Water-entrained
/// cement-based materials", Cement and Concrete Research 31, 647; from memory). Share of cement hydrated = the smaller of 1.031 w / (0.194 + w) with w the
/// water/cement (Schindler and Folliard, 2005, "Heat of hydration models for cementitious materials", ACI Materials Journal 102; from memory) and
/// w / 0.42, above which sealed paste hydrates wholly (Powers; from memory).
/// </remarks>
public static class HydratedPaste
{
    /// <summary>Water bound chemically, kg a kg of cement hydrated.</summary>
    public const double BoundWater = 0.23;

    /// <summary>Volume lost when water is bound, m3 a kg of cement hydrated.</summary>
    public const double ChemicalShrinkage = 0.064e-3;

    /// <summary>Greatest share of the cement that hydrates.</summary>
    /// <param name="waterCement">Water/cement by mass, 1, 0 or more.</param>
    /// <returns>Share, 0 to 1.</returns>
    public static double UltimateHydration(double waterCement) =>
        waterCement <= 0.0 ? 0.0 : Math.Min(1.0, Math.Min(1.031 * waterCement / (0.194 + waterCement), waterCement / 0.42));

    /// <summary>Growth of the solids by hydration.</summary>
    /// <param name="cementHydratedKilograms">Cement hydrated, kg.</param>
    /// <param name="waterKilogramsPerCubicMetre">Density of the water bound, kg/m3.</param>
    /// <returns>Cubic metres.</returns>
    public static double SolidsGrowthCubicMetres(double cementHydratedKilograms, double waterKilogramsPerCubicMetre = 1000.0) =>
        cementHydratedKilograms * (BoundWater / waterKilogramsPerCubicMetre - ChemicalShrinkage);
}
