using Dewstone.Model.Lattices;

namespace Dewstone.Compute.Wetting;

/// <summary>Tells when the window of cells was too small: inside the bin, yet the water reached its side.</summary>
internal static class WindowEdge
{
    /// <summary>Share of the threshold's content from which an outermost cell counts as reached, 1: a power law leaves traces of no weight ahead of its front.</summary>
    public const double ReachedShare = 0.01;

    private const double WallToleranceMetres = 1e-6;

    /// <summary>Looks at the outermost cells of the sides that are no bin wall.</summary>
    /// <param name="lattice">Positions, with the bin's size.</param>
    /// <param name="grid">The cells.</param>
    /// <param name="content">Volumetric water content, 1; index order of the grid.</param>
    /// <param name="limit">Content that counts, 1.</param>
    /// <returns>True when one holds more than the limit.</returns>
    public static bool IsTouched(Lattice lattice, CellGrid grid, ReadOnlySpan<float> content, float limit)
    {
        bool west = grid.Origin.X > WallToleranceMetres;
        bool south = grid.Origin.Y > WallToleranceMetres;
        bool east = grid.Origin.X + grid.Nx * grid.CellMetres < lattice.BinXMetres - WallToleranceMetres;
        bool north = grid.Origin.Y + grid.Ny * grid.CellMetres < lattice.BinYMetres - WallToleranceMetres;
        for (int z = 0; z < grid.Nz; z++)
        {
            ReadOnlySpan<float> plane = content.Slice(z * grid.Ny * grid.Nx, grid.Ny * grid.Nx);
            if ((south && plane[..grid.Nx].ContainsAnyExceptInRange(0f, limit)) || (north && plane[^grid.Nx..].ContainsAnyExceptInRange(0f, limit)))
            {
                return true;
            }

            for (int y = 0; y < grid.Ny; y++)
            {
                if ((west && plane[y * grid.Nx] > limit) || (east && plane[(y + 1) * grid.Nx - 1] > limit))
                {
                    return true;
                }
            }
        }

        return false;
    }
}
