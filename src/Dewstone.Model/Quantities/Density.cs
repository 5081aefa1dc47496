namespace Dewstone.Model.Quantities;

/// <summary>A mass density, held in kilograms per cubic metre.</summary>
/// <param name="KilogramsPerCubicMetre">Value in kilograms per cubic metre.</param>
public readonly record struct Density(double KilogramsPerCubicMetre);
