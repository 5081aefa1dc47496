namespace Dewstone.Compute.Calibration;

/// <summary>How well an exponent of the law fits.</summary>
/// <param name="Exponent">The exponent.</param>
/// <param name="Squares">Sum of squares of residuals over their usual scatter.</param>
public sealed record ExponentTrial(int Exponent, double Squares);
