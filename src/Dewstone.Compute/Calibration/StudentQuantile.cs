using MathNet.Numerics.Distributions;

namespace Dewstone.Compute.Calibration;

/// <summary>Quantiles of Student's t.</summary>
public static class StudentQuantile
{
    /// <summary>Confidence of every interval that a calibration states.</summary>
    public const double Confidence = 0.95;

    /// <summary>Half width of a two-sided interval in standard errors.</summary>
    /// <param name="degreesOfFreedom">Degrees of freedom, above 0.</param>
    /// <param name="confidence">Confidence, 0 to 1.</param>
    /// <returns>t.</returns>
    public static double TwoSided(double degreesOfFreedom, double confidence = Confidence) =>
        StudentT.InvCDF(0.0, 1.0, degreesOfFreedom, 0.5 + 0.5 * confidence);
}
