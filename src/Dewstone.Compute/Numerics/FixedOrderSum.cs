namespace Dewstone.Compute.Numerics;

/// <summary>Sums whose order is fixed by the data's shape, so that they have the same bits on any machine and with any number of threads.</summary>
public static class FixedOrderSum
{
    /// <summary>
    /// Sum of single-precision values in double precision: four interleaved partial sums, added in pairs at the end. In single precision
    /// the sum of a few million cells is already wrong in the third digit, which reads like a leak.
    /// </summary>
    /// <param name="values">What to sum.</param>
    /// <returns>The sum.</returns>
    public static double Of(ReadOnlySpan<float> values)
    {
        double a = 0.0, b = 0.0, c = 0.0, d = 0.0;
        int i = 0;
        for (; i + 4 <= values.Length; i += 4)
        {
            a += values[i];
            b += values[i + 1];
            c += values[i + 2];
            d += values[i + 3];
        }

        for (; i < values.Length; i++)
        {
            a += values[i];
        }

        return (a + b) + (c + d);
    }
}
