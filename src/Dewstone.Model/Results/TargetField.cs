using Dewstone.Model.Lattices;

namespace Dewstone.Model.Results;

/// <summary>The wanted solid on the fine cells.</summary>
public sealed class TargetField
{
    /// <summary>The cells.</summary>
    public required CellGrid Grid { get; init; }

    /// <summary>Share of each cell that is wanted solid, 0 to 1; index order of the grid.</summary>
    public required float[] Fraction { get; init; }

    /// <summary>Volume of the wanted solid on the cells, cubic metres.</summary>
    public required double CubicMetres { get; init; }
}
