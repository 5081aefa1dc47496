namespace Dewstone.Compute.Numerics;

/// <summary>What the cells beyond the edge of a grid are taken for.</summary>
public enum OutsideCells
{
    /// <summary>There are none: only cells of the grid count.</summary>
    Ignored = 0,

    /// <summary>All empty.</summary>
    Empty = 1,

    /// <summary>All set.</summary>
    Set = 2,
}
