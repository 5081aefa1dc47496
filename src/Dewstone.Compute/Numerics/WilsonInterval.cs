namespace Dewstone.Compute.Numerics;

/// <summary>Score interval of a share counted in trials, with 95 % confidence.</summary>
/// <remarks>
/// The shares p for which the count is no further than z standard deviations away, |count/n - p| = z sqrt(p (1 - p)/n), z = 1.959964.
/// Source: Wilson 1927, Probable Inference, the Law of Succession, and Statistical Inference, JASA 22:209. Trials of a Latin hypercube scatter less than
/// independent ones, so the interval is wide rather than narrow there.
/// </remarks>
/// <param name="Low">Lower end, 0 to 1.</param>
/// <param name="High">Upper end, 0 to 1.</param>
public readonly record struct WilsonInterval(double Low, double High)
{
    private const double Z = 1.959963984540054;

    /// <summary>The interval of a count.</summary>
    /// <param name="count">Trials that had it, 0 to <paramref name="trials"/>.</param>
    /// <param name="trials">Trials, 1 or more.</param>
    /// <returns>The interval.</returns>
    public static WilsonInterval Of(int count, int trials)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(trials, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, trials);
        double n = trials, share = count / n;
        double middle = share + Z * Z / (2.0 * n);
        double half = Z * Math.Sqrt(share * (1.0 - share) / n + Z * Z / (4.0 * n * n));
        double whole = 1.0 + Z * Z / n;
        return new WilsonInterval(count == 0 ? 0.0 : (middle - half) / whole, count == trials ? 1.0 : (middle + half) / whole);
    }
}
