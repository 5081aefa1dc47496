namespace Dewstone.Model.Results;

/// <summary>A hole an animal may enter.</summary>
/// <param name="CubicMetres">Its volume, m3.</param>
/// <param name="Exits">Its mouths, 1 or more.</param>
/// <param name="MouthMetres">Largest ball that stands in its widest mouth, m.</param>
/// <param name="MouthHeightMetres">Height of that mouth above the seabed, m.</param>
/// <param name="DepthMetres">From its innermost place to the nearest mouth, straight, m.</param>
public sealed record HabitatHole(double CubicMetres, int Exits, double MouthMetres, double MouthHeightMetres, double DepthMetres);
