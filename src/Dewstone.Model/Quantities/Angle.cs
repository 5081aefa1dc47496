namespace Dewstone.Model.Quantities;

/// <summary>A plane angle, held in degrees.</summary>
/// <param name="Degrees">Value in degrees.</param>
public readonly record struct Angle(double Degrees)
{
    /// <summary>The angle in radians.</summary>
    public double Radians => Degrees * (Math.PI / 180.0);
}
