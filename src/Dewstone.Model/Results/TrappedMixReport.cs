namespace Dewstone.Model.Results;

/// <summary>Loose mix that cannot be got out of the unit.</summary>
/// <param name="ToolMetres">Diameter of the clean-out tool, metres.</param>
/// <param name="Kilograms">Mass of all of it, kg.</param>
/// <param name="Pockets">Where it is, heaviest first.</param>
public sealed record TrappedMixReport(double ToolMetres, double Kilograms, IReadOnlyList<SolidPiece> Pockets);
