namespace Dewstone.Model.Description;

/// <summary>Faces of the outer box; x up is east, y up is north, z up is top.</summary>
[Flags]
public enum FaceSet
{
    /// <summary>No face.</summary>
    None = 0,

    /// <summary>The face at the largest x.</summary>
    East = 1,

    /// <summary>The face at x = 0.</summary>
    West = 2,

    /// <summary>The face at the largest y.</summary>
    North = 4,

    /// <summary>The face at y = 0.</summary>
    South = 8,

    /// <summary>The face at the largest z.</summary>
    Top = 16,

    /// <summary>The face at z = 0.</summary>
    Bottom = 32,

    /// <summary>The four upright faces.</summary>
    Sides = East | West | North | South,
}
