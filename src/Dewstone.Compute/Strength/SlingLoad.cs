namespace Dewstone.Compute.Strength;

/// <summary>Tension in the legs of a sling, and what hardware and inserts must bear.</summary>
/// <remarks>
/// T = W d / (n sin a): W the weight, d the dynamic factor, n the legs that carry, a their angle from the HORIZONTAL (the same as 1 / cos of the angle from the
/// vertical; mixing the two is the trap). A stiff body on four legs hangs on two. Below 30 degrees no sling is used (ASME B30.9, from memory). Source of the formula:
/// statics; charts of it are common. Factors: 29 CFR 1926.704(b), inserts of precast other than tilt-up 4 times the load, (d) lifting hardware 5 times.
/// </remarks>
public static class SlingLoad
{
    /// <summary>Standard gravity, m/s2.</summary>
    public const double Gravity = 9.80665;

    /// <summary>Least angle of a leg from the horizontal, degrees.</summary>
    public const double LeastDegrees = 30.0;

    /// <summary>What inserts must bear over the load intended, 1.</summary>
    public const double InsertFactor = 4.0;

    /// <summary>What lifting hardware must bear over the load intended, 1.</summary>
    public const double HardwareFactor = 5.0;

    /// <summary>Legs that are counted on.</summary>
    /// <param name="legs">Legs there are, 1 or more.</param>
    /// <returns>All up to three; two of four and more.</returns>
    public static int Carrying(int legs) => legs >= 4 ? 2 : legs;

    /// <summary>Tension in a leg.</summary>
    /// <param name="newtons">Weight, N.</param>
    /// <param name="dynamicFactor">Factor for hoisting, 1.</param>
    /// <param name="carrying">Legs that carry.</param>
    /// <param name="degreesFromHorizontal">Angle of the legs from the horizontal, degrees, above 0 to 90.</param>
    /// <returns>Tension, N.</returns>
    public static double Tension(double newtons, double dynamicFactor, int carrying, double degreesFromHorizontal) =>
        newtons * dynamicFactor / (carrying * Math.Sin(degreesFromHorizontal * Math.PI / 180.0));
}
