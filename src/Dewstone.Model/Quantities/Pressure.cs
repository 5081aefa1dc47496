namespace Dewstone.Model.Quantities;

/// <summary>A pressure or stress, held in pascals.</summary>
/// <param name="Pascals">Value in pascals.</param>
public readonly record struct Pressure(double Pascals);
