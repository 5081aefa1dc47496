namespace Dewstone.Model.Quantities;

/// <summary>A speed, held in metres per second.</summary>
/// <param name="MetresPerSecond">Value in metres per second.</param>
public readonly record struct Speed(double MetresPerSecond);
