using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>Cells of loose mix that the hardened solid encloses where solid was wanted.</summary>
internal static class DryPockets
{
    /// <summary>Finds them.</summary>
    /// <param name="target">Wanted solid.</param>
    /// <param name="moisture">What hardened.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>Index order of the grid; true in a piece of loose mix that touches neither the grid's edge nor a cell wanted empty.</returns>
    public static bool[] Of(TargetField target, MoistureResult moisture, Parallelism parallelism)
    {
        CellGrid grid = moisture.Grid;
        return Of(target, Components.Label(moisture.Hardened, new GridShape(grid.Nx, grid.Ny, grid.Nz), Phase.Empty, Connectivity.Faces, parallelism));
    }

    /// <summary>Finds them among regions of loose mix at hand.</summary>
    /// <param name="target">Wanted solid.</param>
    /// <param name="map">Regions of loose mix, joined by faces.</param>
    /// <returns>As <see cref="Of(TargetField, MoistureResult, Parallelism)"/>.</returns>
    public static bool[] Of(TargetField target, ComponentMap map)
    {
        CellGrid grid = target.Grid;
        GridShape cells = new(grid.Nx, grid.Ny, grid.Nz);
        var open = new bool[map.Pieces.Count + 1];
        open[0] = true;
        for (int z = 0; z < grid.Nz; z++)
        {
            for (int y = 0; y < grid.Ny; y++)
            {
                int row = cells.Index(0, y, z);
                bool edge = z == 0 || z == grid.Nz - 1 || y == 0 || y == grid.Ny - 1;
                for (int x = 0; x < grid.Nx; x++)
                {
                    open[map.Labels[row + x]] |= edge || x == 0 || x == grid.Nx - 1 || target.Fraction[row + x] < 0.5f;
                }
            }
        }

        var pockets = new bool[grid.Count];
        for (int i = 0; i < pockets.Length; i++)
        {
            pockets[i] = !open[map.Labels[i]];
        }

        return pockets;
    }

    /// <summary>Whether a point of the hardened surface is the wall of a pocket: one of the eight cell centres around it belongs to one.</summary>
    /// <param name="pockets">From <see cref="Of(TargetField, MoistureResult, Parallelism)"/>.</param>
    /// <param name="grid">The cells.</param>
    /// <param name="x">From the grid's corner, metres.</param>
    /// <param name="y">From the grid's corner, metres.</param>
    /// <param name="z">From the grid's corner, metres.</param>
    /// <returns>True on a pocket's wall.</returns>
    public static bool IsAt(bool[] pockets, CellGrid grid, double x, double y, double z)
    {
        int i = (int)Math.Floor(x / grid.CellMetres - 0.5), j = (int)Math.Floor(y / grid.CellMetres - 0.5), k = (int)Math.Floor(z / grid.CellHeightMetres - 0.5);
        for (int c = Math.Max(0, k); c <= Math.Min(grid.Nz - 1, k + 1); c++)
        {
            for (int b = Math.Max(0, j); b <= Math.Min(grid.Ny - 1, j + 1); b++)
            {
                for (int a = Math.Max(0, i); a <= Math.Min(grid.Nx - 1, i + 1); a++)
                {
                    if (pockets[(c * grid.Ny + b) * grid.Nx + a])
                    {
                        return true;
                    }
                }
            }
        }

        return false;
    }
}
