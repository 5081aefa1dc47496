namespace Dewstone.Compute.Strength;

/// <summary>Compressive strength from the space that cement gel fills (Powers).</summary>
/// <remarks>
/// Ratio x = 0.68 a / (0.32 a + w/c + air/c), strength = 234 x^3 MPa, with a the share of cement hydrated, w/c water and air/c air by volume to cement by mass
/// (cm3/g). A loose bed keeps its air; leaving it out gives the strength of gel, several times too much. Assumes Portland cement and sound sand. The factors
/// belong together: 234 MPa with 0.68 and 0.32; the other pair in use is 240 MPa with 0.657 and 0.319. Source: Powers, 1958, "Structure and physical properties of
/// hardened Portland cement paste", Journal of the American Ceramic Society 41 (from memory).
/// </remarks>
public static class GelSpaceRatio
{
    /// <summary>Strength of gel without any space, Pa.</summary>
    public const double IntrinsicPascals = 234e6;

    private const double Gel = 0.68, Cement = 0.32;

    /// <summary>The ratio.</summary>
    /// <param name="hydrated">Share of the cement hydrated, 0 to 1.</param>
    /// <param name="waterCement">Water/cement, cm3/g, above 0.</param>
    /// <param name="airCement">Air/cement, cm3/g, 0 or more.</param>
    /// <returns>Gel over space, 1.</returns>
    public static double Of(double hydrated, double waterCement, double airCement = 0.0) =>
        Gel * hydrated / (Cement * hydrated + waterCement + airCement);

    /// <summary>Strength of a ratio.</summary>
    /// <param name="ratio">Gel over space, 1.</param>
    /// <returns>Compressive strength, Pa.</returns>
    public static double Pascals(double ratio) => IntrinsicPascals * ratio * ratio * ratio;
}
