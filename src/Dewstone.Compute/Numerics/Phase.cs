namespace Dewstone.Compute.Numerics;

/// <summary>The two kinds of cell in a field of bytes.</summary>
public enum Phase
{
    /// <summary>Cells that are 0, such as loose mix.</summary>
    Empty = 0,

    /// <summary>Cells that are not 0, such as hardened mix.</summary>
    Set = 1,
}
