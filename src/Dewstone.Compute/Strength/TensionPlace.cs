using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Strength;

/// <summary>Tension around a place.</summary>
/// <param name="Where">Middle of the ball, metres, unit frame.</param>
/// <param name="Tension">Mean largest principal tension, Pa.</param>
/// <param name="Cracking">Cracking stress of the mean strength at 28 days, Pa.</param>
internal sealed record TensionPlace(Point3 Where, double Tension, double Cracking)
{
    /// <summary>Tension over cracking stress, 1.</summary>
    public double Use => Tension / Cracking;
}
