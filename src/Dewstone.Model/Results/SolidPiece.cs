using Dewstone.Model.Quantities;

namespace Dewstone.Model.Results;

/// <summary>A piece of hardened or of loose mix.</summary>
/// <param name="CubicMetres">Volume, cubic metres, in whole cells.</param>
/// <param name="Kilograms">Mass of mix and water in it, kg.</param>
/// <param name="Centre">Mean place of its cells, metres, unit frame.</param>
/// <param name="Size">Edges of the smallest box around it, metres, unit frame.</param>
public sealed record SolidPiece(double CubicMetres, double Kilograms, Point3 Centre, Size3 Size);
