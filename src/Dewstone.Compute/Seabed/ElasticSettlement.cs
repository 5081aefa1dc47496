namespace Dewstone.Compute.Seabed;

/// <summary>How far a stiff square foot settles into an elastic seabed, before anything gives way.</summary>
/// <remarks>
/// s = q B (1 - nu^2) I / E: q the pressure, B the width, I = 0.88 for a rigid square. Assumes a deep even soil of one stiffness. Source: elastic half space, handbook form (from
/// memory; Timoshenko and Goodier, "Theory of Elasticity", for the rigid punch).
/// </remarks>
public static class ElasticSettlement
{
    /// <summary>I of a rigid square, 1.</summary>
    public const double RigidSquare = 0.88;

    /// <summary>Poisson's ratio taken for soil, 1; common practice, no source.</summary>
    public const double Poisson = 0.3;

    /// <summary>Settlement.</summary>
    /// <param name="pressure">q, Pa.</param>
    /// <param name="width">B, m.</param>
    /// <param name="stiffness">E, Pa.</param>
    /// <param name="poisson">Poisson's ratio, 1.</param>
    /// <returns>m.</returns>
    public static double Of(double pressure, double width, double stiffness, double poisson = Poisson) =>
        pressure * width * (1.0 - poisson * poisson) * RigidSquare / stiffness;
}
