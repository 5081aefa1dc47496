namespace Dewstone.Compute.Numerics;

/// <summary>
/// Elementary functions whose bits are the same on every machine: plus, times, divide and powers of two only, in the order written.
/// The library's own change their last bits with the vector units of the processor, so nothing that decides a dose may call those.
/// </summary>
public static class Elementary
{
    private const double Log2E = 1.4426950408889634;

    // ln 2 in two parts: the first has 32 trailing zero bits, so that its product with a whole number below 2^11 is exact.
    private const double Ln2High = 6.93147180369123816490e-01;
    private const double Ln2Low = 1.90821492927058770002e-10;

    // 1/k! for k = 13 down to 2. At |r| <= ln(2)/2 the first term left out is 4e-18 of the result.
    private static readonly double[] InverseFactorials =
    [
        1.0 / 6227020800.0, 1.0 / 479001600.0, 1.0 / 39916800.0, 1.0 / 3628800.0, 1.0 / 362880.0, 1.0 / 40320.0,
        1.0 / 5040.0, 1.0 / 720.0, 1.0 / 120.0, 1.0 / 24.0, 1.0 / 6.0, 0.5,
    ];

    /// <summary>e raised to <paramref name="x"/>.</summary>
    /// <remarks>
    /// x = k ln 2 + r with whole k and |r| at most ln(2)/2; Taylor polynomial of degree 13 in r by Horner's rule; times 2^k.
    /// Within 2 units in the last place of the true value.
    /// </remarks>
    /// <param name="x">Exponent, 1. Range -700 to 700.</param>
    /// <returns>e^x, 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The exponent is outside the range or not a number.</exception>
    public static double Exp(double x)
    {
        if (!(x >= -700.0 && x <= 700.0))
        {
            throw new ArgumentOutOfRangeException(nameof(x), x, "-700 to 700.");
        }

        double k = Math.Floor(x * Log2E + 0.5);
        double r = (x - k * Ln2High) - k * Ln2Low;
        double sum = 0.0;
        foreach (double coefficient in InverseFactorials)
        {
            sum = sum * r + coefficient;
        }

        double power = BitConverter.Int64BitsToDouble((long)(k + 1023.0) << 52);
        return (1.0 + (r + r * r * sum)) * power;
    }

    /// <summary>Natural logarithm of <paramref name="x"/>.</summary>
    /// <remarks>
    /// x = 2^k m with m from sqrt(1/2) to sqrt(2); ln m = 2 (s + s^3/3 + s^5/5 + ...) with s = (m - 1)/(m + 1), |s| at most 0.1716, up to s^23: the first
    /// term left out is 4e-20 of s. Relative error below 1e-15.
    /// </remarks>
    /// <param name="x">A normal number above 0.</param>
    /// <returns>ln x, 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, too small to be normal, infinite, or not a number.</exception>
    public static double Log(double x)
    {
        if (!(x > 0.0) || !double.IsNormal(x))
        {
            throw new ArgumentOutOfRangeException(nameof(x), x, "a normal number above 0.");
        }

        long bits = BitConverter.DoubleToInt64Bits(x);
        int k = (int)(bits >> 52) - 1023;
        double m = BitConverter.Int64BitsToDouble((bits & 0x000FFFFFFFFFFFFFL) | 0x3FF0000000000000L);
        if (m > 1.4142135623730951)
        {
            (m, k) = (m * 0.5, k + 1);
        }

        double s = (m - 1.0) / (m + 1.0), square = s * s, sum = 0.0;
        for (int power = 23; power >= 3; power -= 2)
        {
            sum = (sum + 1.0 / power) * square;
        }

        return k * Ln2High + (k * Ln2Low + 2.0 * (s + s * sum));
    }

    /// <summary>A whole power by repeated squaring, lowest bit first.</summary>
    /// <param name="x">Base.</param>
    /// <param name="exponent">Exponent, 0 or more.</param>
    /// <returns>x^exponent.</returns>
    public static double WholePower(double x, int exponent)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(exponent);
        double result = 1.0;
        double square = x;
        for (int rest = exponent; rest > 0; rest >>= 1)
        {
            if ((rest & 1) != 0)
            {
                result *= square;
            }

            square *= square;
        }

        return result;
    }
}
