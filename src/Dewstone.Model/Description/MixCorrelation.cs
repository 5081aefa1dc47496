namespace Dewstone.Model.Description;

/// <summary>Correlations of the errors of uncertain figures, -1 to 1 each.</summary>
/// <param name="DiffusivityThreshold">Of diffusivity and threshold.</param>
/// <param name="DiffusivityDensity">Of diffusivity and loose density.</param>
/// <param name="ThresholdDensity">Of threshold and loose density.</param>
public sealed record MixCorrelation(double DiffusivityThreshold, double DiffusivityDensity, double ThresholdDensity)
{
    // Figures are written with six digits.
    private const double Rounding = 1e-5;

    /// <summary>Cholesky's factor of the correlations: three independent standard normal numbers to three that are correlated.</summary>
    /// <returns>Lower triangle in the order diffusivity, threshold, density, without its first entry, 1; null when no figures can have these correlations together.</returns>
    public (double TD, double TT, double RD, double RT, double RR)? Factor()
    {
        double second = 1.0 - DiffusivityThreshold * DiffusivityThreshold, own = Math.Sqrt(Math.Max(0.0, second));
        double rest = ThresholdDensity - DiffusivityThreshold * DiffusivityDensity;

        // With no scatter of its own the threshold is the diffusivity over again, and both must go with the density alike.
        double shared = own > Rounding ? rest / own : 0.0, third = 1.0 - DiffusivityDensity * DiffusivityDensity - shared * shared;
        return second >= 0.0 && third >= -Rounding && (own > Rounding || Math.Abs(rest) <= Rounding)
            ? (DiffusivityThreshold, own, DiffusivityDensity, shared, Math.Sqrt(Math.Max(0.0, third))) : null;
    }
}
