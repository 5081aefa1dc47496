namespace Dewstone.Model.Measurements;

/// <summary>A test ball: one dose in the middle of a bucket of loose mix, dug out once it has set.</summary>
/// <param name="DoseMillilitres">Dose, mL.</param>
/// <param name="DiametersMillimetres">Three diameters at right angles, mm.</param>
/// <param name="WetGrams">Mass as dug out, g.</param>
/// <param name="DryGrams">Mass once dried, g.</param>
/// <param name="BedCelsius">Temperature of the bucket, degC.</param>
/// <param name="Line">Line in its file, from 1.</param>
public sealed record BallReading(double DoseMillilitres, IReadOnlyList<double> DiametersMillimetres, double WetGrams, double DryGrams, double BedCelsius, int Line)
{
    /// <summary>Diameter of the ball of the same volume, mm.</summary>
    public double DiameterMillimetres => Math.Cbrt(DiametersMillimetres[0] * DiametersMillimetres[1] * DiametersMillimetres[2]);
}
