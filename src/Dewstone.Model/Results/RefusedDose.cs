namespace Dewstone.Model.Results;

/// <summary>A dose the pores could not take.</summary>
/// <param name="Index">Flat lattice index.</param>
/// <param name="CubicMetres">Volume refused.</param>
public sealed record RefusedDose(int Index, double CubicMetres);
