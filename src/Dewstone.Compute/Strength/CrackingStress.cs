namespace Dewstone.Compute.Strength;

/// <summary>Tension at which concrete cracks.</summary>
/// <remarks>
/// fr = 0.62 sqrt(f) MPa with f the compressive strength at that age, MPa: the modulus of rupture of ACI 318-19, equation (19.2.3.1), for normal-weight concrete. For handling it is
/// divided by 1.5 (PCI Design Handbook; both from memory). A bed printed loose is weaker in tension at its layers than this rule knows; test it.
/// </remarks>
public static class CrackingStress
{
    /// <summary>Least cracking stress over tension for handling, 1.</summary>
    public const double LeastFactor = 1.5;

    /// <summary>The stress.</summary>
    /// <param name="compressivePascals">Compressive strength at that age, Pa.</param>
    /// <returns>Cracking stress, Pa.</returns>
    public static double Pascals(double compressivePascals) => 0.62e6 * Math.Sqrt(Math.Max(0.0, compressivePascals) * 1e-6);
}
