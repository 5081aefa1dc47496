namespace Dewstone.Compute.Numerics;

/// <summary>A box of cells, both corners inside it.</summary>
/// <param name="FirstX">Smallest x, from 0.</param>
/// <param name="FirstY">Smallest y, from 0.</param>
/// <param name="FirstZ">Smallest z, from 0.</param>
/// <param name="LastX">Largest x.</param>
/// <param name="LastY">Largest y.</param>
/// <param name="LastZ">Largest z.</param>
public readonly record struct CellBox(int FirstX, int FirstY, int FirstZ, int LastX, int LastY, int LastZ)
{
    /// <summary>Whether the box reaches an edge of a grid.</summary>
    /// <param name="shape">The grid.</param>
    /// <returns>True when it touches at least one of the six sides.</returns>
    public bool TouchesEdge(GridShape shape) =>
        FirstX == 0 || FirstY == 0 || FirstZ == 0 || LastX == shape.Nx - 1 || LastY == shape.Ny - 1 || LastZ == shape.Nz - 1;
}
