namespace Dewstone.Compute.Strength;

/// <summary>Compressive strength from the shares of cement, water and air (Feret).</summary>
/// <remarks>
/// f = K (c / (c + w + a))^2 with absolute volumes of cement, water and air; K depends on cement and age, 250 MPa at 28 d where nothing better is known. Source:
/// Feret, 1892, "Sur la compacité des mortiers hydrauliques", Annales des Ponts et Chaussées (form and constant from memory).
/// </remarks>
public static class FeretLaw
{
    /// <summary>K at 28 days, Pa.</summary>
    public const double Pascals28 = 250e6;

    /// <summary>Strength at 28 days.</summary>
    /// <param name="cement">Volume of cement in a volume of bed, 1.</param>
    /// <param name="water">Volume of water, 1.</param>
    /// <param name="air">Volume of air, 1.</param>
    /// <returns>Compressive strength, Pa.</returns>
    public static double Pascals(double cement, double water, double air)
    {
        double share = cement / (cement + water + air);
        return Pascals28 * share * share;
    }
}
