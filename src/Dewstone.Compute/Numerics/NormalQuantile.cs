namespace Dewstone.Compute.Numerics;

/// <summary>Quantile of the standard normal distribution, with the same bits on every machine.</summary>
/// <remarks>
/// Source: Wichura 1988, Algorithm AS 241, Applied Statistics 37:477, routine PPND16 (coefficients from memory; a test holds them against tables and the
/// integral). Its far tail, below 1.4e-11, is left out: fractions nearer to 0 or 1 than <see cref="Nearest"/> count as that, 6.7 standard deviations.
/// </remarks>
internal static class NormalQuantile
{
    /// <summary>The nearest to 0 or 1 that a fraction counts.</summary>
    public const double Nearest = 1.4e-11;

    private static readonly double[] MiddleAbove =
    [
        2.5090809287301226727e3, 3.3430575583588128105e4, 6.7265770927008700853e4, 4.5921953931549871457e4,
        1.3731693765509461125e4, 1.9715909503065514427e3, 1.3314166789178437745e2, 3.3871328727963666080,
    ];

    private static readonly double[] MiddleBelow =
    [
        5.2264952788528545610e3, 2.8729085735721942674e4, 3.9307895800092710610e4, 2.1213794301586595867e4,
        5.3941960214247511077e3, 6.8718700749205790830e2, 4.2313330701600911252e1, 1.0,
    ];

    private static readonly double[] TailAbove =
    [
        7.74545014278341407640e-4, 2.27238449892691845833e-2, 2.41780725177450611770e-1, 1.27045825245236838258,
        3.64784832476320460504, 5.76949722146069140550, 4.63033784615654529590, 1.42343711074968357734,
    ];

    private static readonly double[] TailBelow =
    [
        1.05075007164441684324e-9, 5.47593808499534494600e-4, 1.51986665636164571966e-2, 1.48103976427480074590e-1,
        6.89767334985100004550e-1, 1.67638483018380384940, 2.05319162663775882187, 1.0,
    ];

    /// <summary>The value that a standard normal draw stays below with a probability.</summary>
    /// <param name="fraction">The probability, 0 to 1.</param>
    /// <returns>Standard deviations.</returns>
    public static double At(double fraction)
    {
        double q = fraction - 0.5;
        if (q >= -0.425 && q <= 0.425)
        {
            double r = 0.180625 - q * q;
            return q * Horner(MiddleAbove, r) / Horner(MiddleBelow, r);
        }

        double tail = Math.Max(Nearest, q < 0.0 ? fraction : 1.0 - fraction);
        double t = Math.Sqrt(-Elementary.Log(tail)) - 1.6;
        double size = Horner(TailAbove, t) / Horner(TailBelow, t);
        return q < 0.0 ? -size : size;
    }

    private static double Horner(double[] highestFirst, double x)
    {
        double sum = 0.0;
        foreach (double coefficient in highestFirst)
        {
            sum = sum * x + coefficient;
        }

        return sum;
    }
}
