namespace Dewstone.Compute.Seabed;

/// <summary>What holds the unit in place.</summary>
/// <param name="SubmergedNewtons">Weight under water, N.</param>
/// <param name="Friction">Coefficient of friction, 1.</param>
/// <param name="SlopeRadians">Slope of the seabed, rad; taken to fall the way the sea pushes.</param>
/// <param name="MostNewtons">Greatest resistance the soil's own strength allows, N; infinite on sand.</param>
public readonly record struct Footing(double SubmergedNewtons, double Friction, double SlopeRadians, double MostNewtons = double.PositiveInfinity);
