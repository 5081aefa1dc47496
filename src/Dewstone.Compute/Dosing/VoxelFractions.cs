using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>How much of each needle's own voxel is wanted solid.</summary>
public static class VoxelFractions
{
    /// <summary>Averages the target over each voxel; in a shifted layer the voxel lies half a pitch further in x and y.</summary>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="target">Wanted solid on the cells over the same lattice.</param>
    /// <returns>
    /// Share of the voxel, 0 to 1, index order of the lattice; 0 for positions that are left out near a wall or whose shifted voxel leaves the window.
    /// Summed in double in index order of the cells.
    /// </returns>
    public static double[] Average(Lattice lattice, TargetField target)
    {
        ArgumentNullException.ThrowIfNull(lattice);
        ArgumentNullException.ThrowIfNull(target);
        CellGrid grid = target.Grid;
        var fractions = new double[lattice.Count];
        for (int k = 0; k < lattice.Layers; k++)
        {
            int shift = lattice.IsShifted(k) ? grid.CellsPerPitch / 2 : 0;
            for (int j = 0; j < lattice.Rows; j++)
            {
                for (int i = 0; i < lattice.Columns; i++)
                {
                    int x = i * grid.CellsPerPitch + shift;
                    int y = j * grid.CellsPerPitch + shift;
                    if (HasVoxel(lattice, i, j, k))
                    {
                        fractions[lattice.Index(i, j, k)] = Average(grid, target.Fraction, x, y, k * grid.CellsPerLayer);
                    }
                }
            }
        }

        return fractions;
    }

    /// <summary>Whether a position can be watered: it keeps clear of the walls, and its voxel lies within the window (the last ones of a shifted layer do not).</summary>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="i">Along x, from 0.</param>
    /// <param name="j">Along y, from 0.</param>
    /// <param name="k">Layer, from 0.</param>
    /// <returns>False for positions that get no water.</returns>
    public static bool HasVoxel(Lattice lattice, int i, int j, int k)
    {
        ArgumentNullException.ThrowIfNull(lattice);
        bool leaves = lattice.IsShifted(k) && (i == lattice.Columns - 1 || j == lattice.Rows - 1);
        return !leaves && lattice.IsUsable(i, j, k);
    }

    private static double Average(CellGrid grid, float[] fraction, int x0, int y0, int z0)
    {
        double sum = 0.0;
        for (int z = z0; z < z0 + grid.CellsPerLayer; z++)
        {
            for (int y = y0; y < y0 + grid.CellsPerPitch; y++)
            {
                ReadOnlySpan<float> row = fraction.AsSpan((z * grid.Ny + y) * grid.Nx + x0, grid.CellsPerPitch);
                foreach (float cell in row)
                {
                    sum += cell;
                }
            }
        }

        return sum / ((double)grid.CellsPerPitch * grid.CellsPerPitch * grid.CellsPerLayer);
    }
}
