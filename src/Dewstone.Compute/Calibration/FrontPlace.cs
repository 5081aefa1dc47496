using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Calibration;

/// <summary>Places a front between the middles of two cells.</summary>
internal static class FrontPlace
{
    /// <summary>Where along a row of cells the saturation falls below a threshold for the last time.</summary>
    /// <param name="row">Saturations from the middle of a body outwards.</param>
    /// <param name="threshold">Threshold, above 0.</param>
    /// <param name="power">Power that is nearly straight across the front.</param>
    /// <returns>Cell widths from the beginning of the row; 0 when no cell reaches the threshold.</returns>
    public static double Of(ReadOnlySpan<double> row, double threshold, int power)
    {
        int last = row.Length - 1;
        while (last >= 0 && row[last] < threshold)
        {
            last--;
        }

        if (last < 0)
        {
            return 0.0;
        }

        double inside = Elementary.WholePower(row[last] / threshold, power);
        double outside = last + 1 < row.Length ? Elementary.WholePower(row[last + 1] / threshold, power) : 0.0;
        return last + 0.5 + (inside - 1.0) / (inside - outside);
    }
}
