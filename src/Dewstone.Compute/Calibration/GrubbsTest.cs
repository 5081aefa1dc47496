using MathNet.Numerics.Distributions;

namespace Dewstone.Compute.Calibration;

/// <summary>Grubbs' test for one outlier among readings of one thing, two-sided.</summary>
/// <remarks>
/// G = largest |reading - mean| / standard deviation; critical (n - 1)/sqrt(n) sqrt(t^2/(n - 2 + t^2)), t the upper level/(2n) point of Student's t with
/// n - 2 degrees of freedom. Readings otherwise normal. Source: Grubbs 1969, Technometrics 11:1; critical value as in the NIST/SEMATECH e-Handbook of
/// Statistical Methods, 1.3.5.17.1 (from memory).
/// </remarks>
public static class GrubbsTest
{
    /// <summary>Fewest readings with which the test says anything.</summary>
    public const int Fewest = 3;

    /// <summary>The critical value.</summary>
    /// <param name="count">Readings, 3 or more.</param>
    /// <param name="level">Chance to name an outlier where there is none, 0 to 1.</param>
    /// <returns>G above which a reading is an outlier.</returns>
    public static double Critical(int count, double level)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, Fewest);
        double t = StudentT.InvCDF(0.0, 1.0, count - 2.0, 1.0 - level / (2.0 * count));
        return (count - 1.0) / Math.Sqrt(count) * Math.Sqrt(t * t / (count - 2.0 + t * t));
    }

    /// <summary>The reading farthest from the mean, and how far.</summary>
    /// <param name="readings">Readings, 2 or more.</param>
    /// <returns>Index from 0 and G; G 0 when all are equal.</returns>
    public static (int Index, double Distance) Farthest(IReadOnlyList<double> readings)
    {
        double mean = readings.Average();
        int index = 0;
        double squares = 0.0;
        for (int i = 0; i < readings.Count; i++)
        {
            double off = readings[i] - mean;
            squares += off * off;
            index = Math.Abs(off) > Math.Abs(readings[index] - mean) ? i : index;
        }

        double deviation = Math.Sqrt(squares / (readings.Count - 1.0));
        return (index, deviation > 0.0 ? Math.Abs(readings[index] - mean) / deviation : 0.0);
    }

    /// <summary>The outlier, if any.</summary>
    /// <param name="readings">Readings.</param>
    /// <param name="level">Chance to name one where there is none, 0 to 1.</param>
    /// <returns>Index from 0; null for none, and for fewer than 3 readings.</returns>
    public static int? Outlier(IReadOnlyList<double> readings, double level)
    {
        if (readings.Count < Fewest)
        {
            return null;
        }

        (int index, double distance) = Farthest(readings);
        return distance > Critical(readings.Count, level) ? index : null;
    }
}
