namespace Dewstone.Compute.Numerics;

/// <summary>One connected piece of a field of cells.</summary>
/// <param name="Cells">How many cells it has.</param>
/// <param name="FirstCell">Flat index of its first cell.</param>
/// <param name="Box">The smallest box around it.</param>
public sealed record Component(int Cells, int FirstCell, CellBox Box);
