namespace Dewstone.Compute.Strength;

/// <summary>Strength at an age over that at 28 days.</summary>
/// <remarks>
/// beta = exp(s (1 - sqrt(28 / t))), t in equivalent days at 20 degC, s = 0.20, 0.25 and 0.38 for cement classes R, N and S. Source: EN 1992-1-1:2004, equation
/// (3.2) (from memory).
/// </remarks>
/// <param name="s">Coefficient of the cement, 1.</param>
public readonly record struct AgeFactor(double s)
{
    /// <summary>The factor of a cement class.</summary>
    /// <param name="cementClass">R, N or S; anything else counts as N.</param>
    /// <returns>The factor.</returns>
    public static AgeFactor Of(string cementClass) => new(cementClass switch { "R" => 0.20, "S" => 0.38, _ => 0.25 });

    /// <summary>The factor at an age.</summary>
    /// <param name="equivalentDays">Equivalent age, d, above 0.</param>
    /// <returns>1 at 28 days.</returns>
    public double At(double equivalentDays) => Math.Exp(s * (1.0 - Math.Sqrt(28.0 / equivalentDays)));

    /// <summary>The age at which the factor is reached.</summary>
    /// <param name="factor">Factor, above 0.</param>
    /// <returns>Equivalent days; null when it never is.</returns>
    public double? DaysTo(double factor)
    {
        double root = 1.0 - Math.Log(factor) / s;
        return root > 0.0 ? 28.0 / (root * root) : null;
    }
}
