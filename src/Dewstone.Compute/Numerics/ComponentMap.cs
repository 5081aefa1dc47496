namespace Dewstone.Compute.Numerics;

/// <summary>The connected pieces of a field of cells, in the order of their first cells.</summary>
public sealed class ComponentMap
{
    /// <summary>Number of the piece each cell belongs to, from 1; 0 for cells of the other phase. Index order of the grid.</summary>
    public required int[] Labels { get; init; }

    /// <summary>The pieces; number n stands at n - 1.</summary>
    public required IReadOnlyList<Component> Pieces { get; init; }
}
