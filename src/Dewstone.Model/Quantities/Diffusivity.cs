namespace Dewstone.Model.Quantities;

/// <summary>A moisture diffusivity, held in square metres per second.</summary>
/// <param name="SquareMetresPerSecond">Value in square metres per second.</param>
public readonly record struct Diffusivity(double SquareMetresPerSecond);
