namespace Dewstone.Model.Quantities;

/// <summary>A temperature, held in degrees Celsius.</summary>
/// <param name="Celsius">Value in degrees Celsius.</param>
public readonly record struct Temperature(double Celsius)
{
    /// <summary>The absolute temperature in kelvin.</summary>
    public double Kelvin => Celsius + 273.15;
}
