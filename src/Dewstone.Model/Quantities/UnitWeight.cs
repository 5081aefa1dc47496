namespace Dewstone.Model.Quantities;

/// <summary>A weight per volume, held in newtons per cubic metre.</summary>
/// <param name="NewtonsPerCubicMetre">Value in newtons per cubic metre.</param>
public readonly record struct UnitWeight(double NewtonsPerCubicMetre);
