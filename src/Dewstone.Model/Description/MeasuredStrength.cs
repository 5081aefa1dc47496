using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>Strength of cubes cut from the same bed.</summary>
/// <param name="Age">Age.</param>
/// <param name="Curing">Curing temperature.</param>
/// <param name="Strength">Compressive strength.</param>
public sealed record MeasuredStrength(Duration Age, Temperature Curing, Pressure Strength);
