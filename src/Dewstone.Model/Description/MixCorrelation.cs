namespace Dewstone.Model.Description;

/// <summary>Correlations of the errors of uncertain figures, -1 to 1 each.</summary>
/// <param name="DiffusivityThreshold">Of diffusivity and threshold.</param>
/// <param name="DiffusivityDensity">Of diffusivity and loose density.</param>
/// <param name="ThresholdDensity">Of threshold and loose density.</param>
public sealed record MixCorrelation(double DiffusivityThreshold, double DiffusivityDensity, double ThresholdDensity)
{
    /// <summary>Lower triangle of the matrix whose product with its transpose is that of the correlations, in the order diffusivity, threshold, density.</summary>
    /// <returns>Row by row: (1), (10, 11), (20, 21, 22) after the first 1; null when no figures can have these correlations together.</returns>
    public (double L10, double L11, double L20, double L21, double L22)? Factor()
    {
        double second = 1.0 - DiffusivityThreshold * DiffusivityThreshold;
        if (!(second >= 0.0))
        {
            return null;
        }

        double l11 = Math.Sqrt(second), rest = ThresholdDensity - DiffusivityThreshold * DiffusivityDensity;

        // With l11 = 0 the first two are one figure, and both must go with the third alike.
        double l21 = l11 > 0.0 ? rest / l11 : 0.0, third = 1.0 - DiffusivityDensity * DiffusivityDensity - l21 * l21;
        return third >= 0.0 && (l11 > 0.0 || Math.Abs(rest) < 1e-9) ? (DiffusivityThreshold, l11, DiffusivityDensity, l21, Math.Sqrt(third)) : null;
    }
}
