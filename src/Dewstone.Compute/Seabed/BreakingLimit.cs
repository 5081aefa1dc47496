namespace Dewstone.Compute.Seabed;

/// <summary>How high a wave can be before it breaks.</summary>
/// <remarks>
/// By depth: Weggel, 1972, as in the Coastal Engineering Manual part II chapter 4, equations II-4-5 to II-4-7, which on a level seabed is McCowan's 0.78 of the depth.
/// By steepness: Miche, 1944, H = 0.142 L tanh(k d). By Goda, 1970: H = A L0 (1 - exp(-1.5 pi d / L0 (1 + 15 tan^(4/3)))), A = 0.17. The last two from memory.
/// </remarks>
public static class BreakingLimit
{
    /// <summary>Greatest height the depth bears.</summary>
    /// <param name="periodSeconds">Period, s.</param>
    /// <param name="depthMetres">Depth, m.</param>
    /// <param name="slope">Tangent of the seabed's slope, 1; 0 when level.</param>
    /// <returns>m.</returns>
    public static double ByDepth(double periodSeconds, double depthMetres, double slope)
    {
        double a = 43.8 * (1.0 - Math.Exp(-19.0 * slope));
        double b = 1.56 / (1.0 + Math.Exp(-19.5 * slope));
        return b * depthMetres / (1.0 + a * depthMetres / (AiryWave.Gravity * periodSeconds * periodSeconds));
    }

    /// <summary>Greatest height by steepness.</summary>
    /// <param name="wave">Period and depth; its height does not matter.</param>
    /// <returns>m.</returns>
    public static double BySteepness(AiryWave wave)
    {
        ArgumentNullException.ThrowIfNull(wave);
        return 0.142 * wave.LengthMetres * Math.Tanh(wave.RelativeDepth);
    }

    /// <summary>Greatest height by Goda, for comparison.</summary>
    /// <param name="periodSeconds">Period, s.</param>
    /// <param name="depthMetres">Depth, m.</param>
    /// <param name="slope">Tangent of the seabed's slope, 1.</param>
    /// <returns>m.</returns>
    public static double ByGoda(double periodSeconds, double depthMetres, double slope)
    {
        double length = AiryWave.DeepLength(periodSeconds);
        return 0.17 * length * (1.0 - Math.Exp(-1.5 * Math.PI * depthMetres / length * (1.0 + 15.0 * Math.Pow(slope, 4.0 / 3.0))));
    }
}
