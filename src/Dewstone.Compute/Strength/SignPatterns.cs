using System.Numerics;
using System.Runtime.Intrinsics;

namespace Dewstone.Compute.Strength;

/// <summary>The eight sign patterns of a brick's corners (Walsh functions): sums of the corners' values with the signs of each.</summary>
internal static class SignPatterns
{
    /// <summary>Sign of a corner in a pattern.</summary>
    /// <param name="pattern">0 to 7.</param>
    /// <param name="corner">0 to 7.</param>
    /// <returns>1 or -1.</returns>
    public static double Sign(int pattern, int corner) => (BitOperations.PopCount((uint)(pattern & corner)) & 1) == 0 ? 1.0 : -1.0;

    /// <summary>Turns values of the corners into sums by pattern; twice gives eight times the values. Bit order as in <see cref="BrickElement"/>.</summary>
    /// <param name="v">The first eight are turned.</param>
    public static void Transform(Span<Vector256<double>> v)
    {
        Vector256<double> a0 = v[0] + v[1], a1 = v[0] - v[1], a2 = v[2] + v[3], a3 = v[2] - v[3];
        Vector256<double> a4 = v[4] + v[5], a5 = v[4] - v[5], a6 = v[6] + v[7], a7 = v[6] - v[7];
        Vector256<double> b0 = a0 + a2, b1 = a1 + a3, b2 = a0 - a2, b3 = a1 - a3, b4 = a4 + a6, b5 = a5 + a7, b6 = a4 - a6, b7 = a5 - a7;
        (v[0], v[1], v[2], v[3]) = (b0 + b4, b1 + b5, b2 + b6, b3 + b7);
        (v[4], v[5], v[6], v[7]) = (b0 - b4, b1 - b5, b2 - b6, b3 - b7);
    }
}
