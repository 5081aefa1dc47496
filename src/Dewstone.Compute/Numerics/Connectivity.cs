namespace Dewstone.Compute.Numerics;

/// <summary>
/// Which cells touch. Set and empty cells of one field take opposite choices, else a surface could be crossed without a hole or a loop
/// counted twice (Kong and Rosenfeld, "Digital topology: introduction and survey", 1989; from memory).
/// </summary>
public enum Connectivity
{
    /// <summary>Cells that share a face. The safe choice for a solid that has to hold together.</summary>
    Faces = 6,

    /// <summary>Cells that share a face, an edge or a corner.</summary>
    FacesEdgesCorners = 26,
}
