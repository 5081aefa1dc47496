using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Geometry;

/// <summary>The wanted solid as a level field on the fine cells: the field whose level 0 is its surface.</summary>
/// <remarks>
/// Only cells that the surface may pass are asked for their distance: those that are wanted in part and those beside one that is wanted
/// to another share. All others hold plus or minus one cell edge.
/// </remarks>
public static class SurfaceDistances
{
    /// <summary>Fills the field.</summary>
    /// <param name="shape">The wanted solid, unit frame.</param>
    /// <param name="placement">Where the unit stands in the printer frame.</param>
    /// <param name="target">The same solid on the cells.</param>
    /// <param name="parallelism">Threads; the result does not depend on them.</param>
    /// <returns>
    /// Distance of each cell's centre to the surface, metres, positive in the solid; index order (z * Ny + y) * Nx + x.
    /// </returns>
    public static float[] Of(ReefShape shape, UnitPlacement placement, TargetField target, Parallelism parallelism)
    {
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentNullException.ThrowIfNull(placement);
        ArgumentNullException.ThrowIfNull(target);
        CellGrid grid = target.Grid;
        float[] fraction = target.Fraction, distances = new float[grid.Count];
        float beyond = (float)grid.CellMetres;
        Parallel.For(0, grid.Nz, new ParallelOptions { MaxDegreeOfParallelism = parallelism.Threads }, z =>
        {
            for (int y = 0; y < grid.Ny; y++)
            {
                int row = (z * grid.Ny + y) * grid.Nx;
                for (int x = 0; x < grid.Nx; x++)
                {
                    distances[row + x] = IsPassed(fraction, grid, x, y, z)
                        ? -(float)shape.SignedDistance(placement.ToUnit(grid.Centre(x, y, z)))
                        : fraction[row + x] > 0f ? beyond : -beyond;
                }
            }
        });
        return distances;
    }

    private static bool IsPassed(float[] fraction, CellGrid grid, int x, int y, int z)
    {
        int plane = grid.Nx * grid.Ny, at = z * plane + y * grid.Nx + x;
        float own = fraction[at];
        return (own > 0f && own < 1f)
            || (x > 0 && fraction[at - 1] != own) || (x + 1 < grid.Nx && fraction[at + 1] != own)
            || (y > 0 && fraction[at - grid.Nx] != own) || (y + 1 < grid.Ny && fraction[at + grid.Nx] != own)
            || (z > 0 && fraction[at - plane] != own) || (z + 1 < grid.Nz && fraction[at + plane] != own);
    }
}
