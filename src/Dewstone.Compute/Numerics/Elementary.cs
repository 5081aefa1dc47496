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
