namespace Dewstone.Compute.Strength;

/// <summary>Compressive strength of compacted concrete at 28 days from its water/cement, straight between the rows of a handbook.</summary>
/// <remarks>
/// For concrete compacted to next to no air only. Beyond the ends of the table the nearest row is taken. Source: Design and Control of Concrete Mixtures, Portland
/// Cement Association, table 9-3, non-air-entrained, after ACI 211.1.
/// </remarks>
public static class HandbookCurve
{
    private static readonly (double WaterCement, double Megapascals)[] Rows =
        [(0.38, 45.0), (0.42, 40.0), (0.47, 35.0), (0.54, 30.0), (0.61, 25.0), (0.69, 20.0), (0.79, 15.0)];

    /// <summary>Strength at 28 days.</summary>
    /// <param name="waterCement">Water/cement by mass, 1.</param>
    /// <returns>Compressive strength, Pa.</returns>
    public static double Pascals(double waterCement)
    {
        int next = Array.FindIndex(Rows, row => row.WaterCement >= waterCement);
        if (next <= 0)
        {
            return 1e6 * (next == 0 ? Rows[0] : Rows[^1]).Megapascals;
        }

        ((double fromRatio, double from), (double toRatio, double to)) = (Rows[next - 1], Rows[next]);
        return 1e6 * (from + (to - from) * (waterCement - fromRatio) / (toRatio - fromRatio));
    }
}
