namespace Dewstone.Compute.Seabed;

/// <summary>What a seabed bears under a footing that stands on its surface.</summary>
/// <remarks>
/// Assumes level ground and a vertical load in the middle of the (effective) footing. Sand, drained: q = factor gam' B Ng. Nq = exp(pi tan) tan^2(45 + phi / 2);
/// Ng by Vesic 2 (Nq + 1) tan with shape 1 - 0.4 B / L, by Meyerhof (Nq - 1) tan(1.4 phi) with 1 + 0.1 Kp B / L. Terzaghi's own Ng was tabulated (19.7 at 30 deg); it is
/// interpolated here in his table, with 0.4 for a square and 0.5 for a strip. Clay, undrained: q = 5.142 su (1 + 0.2 B / L). Sources: Terzaghi, 1943; Meyerhof, 1963; Vesic,
/// 1973; as tabulated in "Bearing capacity factors" of geotechnical handbooks (confirmed for 20, 30 and 40 deg).
/// </remarks>
public static class BearingCapacity
{
    /// <summary>Nc of undrained clay: 2 + pi, 1.</summary>
    public const double UndrainedFactor = 2.0 + Math.PI;

    /// <summary>Terzaghi's Ng at each 5 degrees from 0 to 50.</summary>
    private static readonly double[] TerzaghiTable = [0.0, 0.5, 1.2, 2.5, 5.0, 9.7, 19.7, 42.4, 100.4, 297.5, 1153.2];

    /// <summary>Nq, 1.</summary>
    /// <param name="frictionRadians">Angle of internal friction, rad, 0 to 50 deg.</param>
    /// <returns>1 when there is no friction.</returns>
    public static double Nq(double frictionRadians)
    {
        double half = Math.Tan(0.25 * Math.PI + 0.5 * frictionRadians);
        return Math.Exp(Math.PI * Math.Tan(frictionRadians)) * half * half;
    }

    /// <summary>Ng by Vesic.</summary>
    /// <param name="frictionRadians">Angle of internal friction, rad.</param>
    /// <returns>1.</returns>
    public static double VesicNg(double frictionRadians) => 2.0 * (Nq(frictionRadians) + 1.0) * Math.Tan(frictionRadians);

    /// <summary>Ng by Meyerhof.</summary>
    /// <param name="frictionRadians">Angle of internal friction, rad.</param>
    /// <returns>1.</returns>
    public static double MeyerhofNg(double frictionRadians) => (Nq(frictionRadians) - 1.0) * Math.Tan(1.4 * frictionRadians);

    /// <summary>Ng by Terzaghi's table, straight between its entries.</summary>
    /// <param name="frictionRadians">Angle of internal friction, rad, 0 to 50 deg.</param>
    /// <returns>1.</returns>
    public static double TerzaghiNg(double frictionRadians)
    {
        double at = frictionRadians * 180.0 / Math.PI / 5.0;
        int low = Math.Clamp((int)at, 0, TerzaghiTable.Length - 2);
        return TerzaghiTable[low] + (at - low) * (TerzaghiTable[low + 1] - TerzaghiTable[low]);
    }

    /// <summary>Sand by Terzaghi.</summary>
    /// <param name="frictionRadians">Angle of internal friction, rad.</param>
    /// <param name="effectiveWeight">Unit weight under water, N/m3.</param>
    /// <param name="width">B, m.</param>
    /// <param name="length">L, m, at least B.</param>
    /// <returns>Pa.</returns>
    public static double Terzaghi(double frictionRadians, double effectiveWeight, double width, double length) =>
        (0.5 - 0.1 * width / length) * effectiveWeight * width * TerzaghiNg(frictionRadians);

    /// <summary>Sand by Vesic; parameters as above.</summary>
    /// <param name="frictionRadians">Angle of internal friction, rad.</param>
    /// <param name="effectiveWeight">Unit weight under water, N/m3.</param>
    /// <param name="width">B, m.</param>
    /// <param name="length">L, m.</param>
    /// <returns>Pa.</returns>
    public static double Vesic(double frictionRadians, double effectiveWeight, double width, double length) =>
        0.5 * effectiveWeight * width * VesicNg(frictionRadians) * (1.0 - 0.4 * width / length);

    /// <summary>Sand by Meyerhof; parameters as above.</summary>
    /// <param name="frictionRadians">Angle of internal friction, rad.</param>
    /// <param name="effectiveWeight">Unit weight under water, N/m3.</param>
    /// <param name="width">B, m.</param>
    /// <param name="length">L, m.</param>
    /// <returns>Pa.</returns>
    public static double Meyerhof(double frictionRadians, double effectiveWeight, double width, double length)
    {
        double half = Math.Tan(0.25 * Math.PI + 0.5 * frictionRadians);
        return 0.5 * effectiveWeight * width * MeyerhofNg(frictionRadians) * (1.0 + 0.1 * half * half * width / length);
    }

    /// <summary>Clay that has no time to drain.</summary>
    /// <param name="undrainedStrength">su, Pa.</param>
    /// <param name="width">B, m.</param>
    /// <param name="length">L, m.</param>
    /// <returns>Pa.</returns>
    public static double Undrained(double undrainedStrength, double width, double length) =>
        UndrainedFactor * undrainedStrength * (1.0 + 0.2 * width / length);
}
