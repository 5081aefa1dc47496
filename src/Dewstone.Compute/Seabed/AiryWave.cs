namespace Dewstone.Compute.Seabed;

/// <summary>A wave of small steepness over a level seabed: its length and how the water moves.</summary>
/// <remarks>
/// Assumes linear theory: no breaking, no current in the wave's length, no set-down. Not for waves near breaking, whose crests are faster. Dispersion:
/// w^2 = g k tanh(k d); u = pi H / T cosh(k s) / sinh(k d) with s the height above the seabed; a = w u. Source: Airy, 1845, in Coastal Engineering Manual
/// (USACE EM 1110-2-1100), part II chapter 1, equations II-1-8, II-1-22 and II-1-24; from memory. Solved by Newton's rule from the approximation of Fenton and McKee, 1990,
/// "On calculating the lengths of water waves", Coastal Engineering 14 (at most 1.7 % off); from memory.
/// </remarks>
public sealed record AiryWave
{
    /// <summary>Acceleration of gravity used at sea, m/s2.</summary>
    public const double Gravity = 9.81;

    private const int Steps = 12;

    /// <summary>Makes a wave.</summary>
    /// <param name="heightMetres">Crest above trough, m, 0 or more.</param>
    /// <param name="periodSeconds">Period, s, more than 0.</param>
    /// <param name="depthMetres">Depth of water, m, more than 0.</param>
    public AiryWave(double heightMetres, double periodSeconds, double depthMetres)
    {
        (HeightMetres, PeriodSeconds, DepthMetres) = (heightMetres, periodSeconds, depthMetres);
        RelativeDepth = Solve(DeepRelativeDepth(periodSeconds, depthMetres));
    }

    /// <summary>Crest above trough, m.</summary>
    public double HeightMetres { get; }

    /// <summary>Period, s.</summary>
    public double PeriodSeconds { get; }

    /// <summary>Depth of water, m.</summary>
    public double DepthMetres { get; }

    /// <summary>k d, 1.</summary>
    public double RelativeDepth { get; }

    /// <summary>Wave number k, 1/m.</summary>
    public double WaveNumber => RelativeDepth / DepthMetres;

    /// <summary>Length, m.</summary>
    public double LengthMetres => 2.0 * Math.PI / WaveNumber;

    /// <summary>Half of the water's way to and fro at the seabed, m.</summary>
    public double ExcursionMetres => SpeedAt(0.0) * PeriodSeconds / (2.0 * Math.PI);

    /// <summary>Length in deep water of a period.</summary>
    /// <param name="periodSeconds">Period, s.</param>
    /// <returns>g T^2 / (2 pi), m.</returns>
    public static double DeepLength(double periodSeconds) => Gravity * periodSeconds * periodSeconds / (2.0 * Math.PI);

    /// <summary>Greatest horizontal speed of the water.</summary>
    /// <param name="aboveMetres">Height above the seabed, m; at most the depth is used.</param>
    /// <returns>m/s.</returns>
    public double SpeedAt(double aboveMetres)
    {
        double s = WaveNumber * Math.Min(aboveMetres, DepthMetres), d = RelativeDepth;
        // cosh(s) / sinh(d) in a form that does not overflow in deep water.
        double ratio = (Math.Exp(s - d) + Math.Exp(-s - d)) / (1.0 - Math.Exp(-2.0 * d));
        return Math.PI * HeightMetres / PeriodSeconds * ratio;
    }

    /// <summary>Greatest horizontal acceleration of the water.</summary>
    /// <param name="aboveMetres">Height above the seabed, m; at most the depth is used.</param>
    /// <returns>m/s2.</returns>
    public double AccelerationAt(double aboveMetres) => SpeedAt(aboveMetres) * 2.0 * Math.PI / PeriodSeconds;

    /// <summary>The approximation the solution starts from.</summary>
    /// <param name="deepRelativeDepth">2 pi d / L0, 1.</param>
    /// <returns>k d, 1.</returns>
    internal static double Approximate(double deepRelativeDepth) =>
        deepRelativeDepth / Math.Pow(Math.Tanh(Math.Pow(deepRelativeDepth, 0.75)), 2.0 / 3.0);

    private static double DeepRelativeDepth(double period, double depth) => 2.0 * Math.PI * depth / DeepLength(period);

    private static double Solve(double deep)
    {
        double x = Approximate(deep);
        for (int i = 0; i < Steps; i++)
        {
            double tanh = Math.Tanh(x);
            x -= (x * tanh - deep) / (tanh + x * (1.0 - tanh * tanh));
        }

        return x;
    }
}
