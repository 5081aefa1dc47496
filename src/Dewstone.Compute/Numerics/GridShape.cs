namespace Dewstone.Compute.Numerics;

/// <summary>How many cells a flat field has along each axis; index order (z * Ny + y) * Nx + x.</summary>
/// <param name="Nx">Cells along x, 1 or more.</param>
/// <param name="Ny">Cells along y, 1 or more.</param>
/// <param name="Nz">Cells along z, 1 or more.</param>
public readonly record struct GridShape(int Nx, int Ny, int Nz)
{
    /// <summary>Greatest number of cells along one axis: squared distances must stay below 2^30.</summary>
    public const int LongestAxis = 16_384;

    /// <summary>Cells of one plane of constant z.</summary>
    public int Plane => Nx * Ny;

    /// <summary>Cells in all.</summary>
    public int Count => Nx * Ny * Nz;

    /// <summary>Flat index of a cell.</summary>
    /// <param name="x">Cell along x, from 0.</param>
    /// <param name="y">Cell along y, from 0.</param>
    /// <param name="z">Cell along z, from 0.</param>
    /// <returns>The index.</returns>
    public int Index(int x, int y, int z) => (z * Ny + y) * Nx + x;

    /// <summary>Refuses a shape that is empty or too large, and a field of another size.</summary>
    /// <param name="length">Cells the field has.</param>
    /// <param name="name">Name of the field, for the message.</param>
    /// <exception cref="ArgumentException">The field does not have this shape.</exception>
    internal void Require(int length, string name)
    {
        if (Nx < 1 || Ny < 1 || Nz < 1 || Nx > LongestAxis || Ny > LongestAxis || Nz > LongestAxis)
        {
            throw new ArgumentException($"A grid has 1 to {LongestAxis} cells along each axis, not {Nx} x {Ny} x {Nz}.", name);
        }

        long cells = (long)Nx * Ny * Nz;
        if (cells != length)
        {
            throw new ArgumentException($"The field has {length} cells, the grid {Nx} x {Ny} x {Nz} = {cells}.", name);
        }
    }
}
