using System.Runtime.Intrinsics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Geometry;

/// <summary>The wanted solid as a level field, whose level 0 is its surface, on the fine cells and one more all around.</summary>
/// <remarks>
/// Only cells that the surface may pass are asked for their distance: those that are wanted in part and those beside one that is wanted
/// to another share. All others hold plus or minus one cell edge. With the cells all around, a face that lies in the grid's outermost
/// cells stands where the distance says, and not at the grid's edge.
/// </remarks>
public static class SurfaceDistances
{
    /// <summary>Fills the field.</summary>
    /// <param name="shape">The wanted solid, unit frame.</param>
    /// <param name="placement">Where the unit stands in the printer frame.</param>
    /// <param name="target">The same solid on the cells.</param>
    /// <param name="parallelism">Threads; the result does not depend on them.</param>
    /// <returns>
    /// The target's cells with one more on each side, and the distance of each centre to the surface, metres, positive in the solid; index
    /// order of these cells.
    /// </returns>
    public static (CellGrid Grid, float[] Distances) Of(ReefShape shape, UnitPlacement placement, TargetField target, Parallelism parallelism)
    {
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentNullException.ThrowIfNull(placement);
        ArgumentNullException.ThrowIfNull(target);
        CellGrid inner = target.Grid;
        CellGrid grid = inner with
        {
            Nx = inner.Nx + 2,
            Ny = inner.Ny + 2,
            Nz = inner.Nz + 2,
            Origin = inner.Origin - new Point3(inner.CellMetres, inner.CellMetres, inner.CellHeightMetres),
        };
        float[] distances = new float[grid.Count];
        float beyond = (float)grid.CellMetres;
        Parallel.For(0, grid.Nz, new ParallelOptions { MaxDegreeOfParallelism = parallelism.Threads }, z =>
        {
            for (int y = 0; y < grid.Ny; y++)
            {
                Span<float> row = distances.AsSpan((z * grid.Ny + y) * grid.Nx, grid.Nx);
                int x = 0;
                while (x < grid.Nx)
                {
                    int plain = PlainCells(target, x - 1, y - 1, z - 1);
                    if (plain > 0)
                    {
                        row.Slice(x, plain).Fill(Share(target, x - 1, y - 1, z - 1) > 0f ? beyond : -beyond);
                        x += plain;
                        continue;
                    }

                    row[x] = IsPassed(target, x - 1, y - 1, z - 1)
                        ? -(float)shape.SignedDistance(placement.ToUnit(grid.Centre(x, y, z)))
                        : Share(target, x - 1, y - 1, z - 1) > 0f ? beyond : -beyond;
                    x++;
                }
            }
        });
        return (grid, distances);
    }

    // Four cells at once that the surface does not pass and that are all wanted or all not, as most are; none where it has to be looked at more closely.
    private static int PlainCells(TargetField target, int x, int y, int z)
    {
        const int Together = 4;
        CellGrid grid = target.Grid;
        if (x < 1 || y < 1 || z < 1 || x + Together >= grid.Nx || y + 1 >= grid.Ny || z + 1 >= grid.Nz)
        {
            return 0;
        }

        ReadOnlySpan<float> share = target.Fraction;
        int at = (z * grid.Ny + y) * grid.Nx + x, plane = grid.Nx * grid.Ny;
        Vector128<float> own = Vector128.Create(share[at]);
        return (share[at] == 0f || share[at] == 1f)
            && Vector128.EqualsAll(At(share, at - 1), own) && Vector128.EqualsAll(At(share, at), own) && Vector128.EqualsAll(At(share, at + 1), own)
            && Vector128.EqualsAll(At(share, at - grid.Nx), own) && Vector128.EqualsAll(At(share, at + grid.Nx), own)
            && Vector128.EqualsAll(At(share, at - plane), own) && Vector128.EqualsAll(At(share, at + plane), own)
            ? Together : 0;

        static Vector128<float> At(ReadOnlySpan<float> share, int first) => Vector128.Create(share.Slice(first, Together));
    }

    private static bool IsPassed(TargetField target, int x, int y, int z)
    {
        float own = Share(target, x, y, z);
        return (own > 0f && own < 1f)
            || Share(target, x - 1, y, z) != own || Share(target, x + 1, y, z) != own
            || Share(target, x, y - 1, z) != own || Share(target, x, y + 1, z) != own
            || Share(target, x, y, z - 1) != own || Share(target, x, y, z + 1) != own;
    }

    private static float Share(TargetField target, int x, int y, int z)
    {
        CellGrid grid = target.Grid;
        return (uint)x < (uint)grid.Nx && (uint)y < (uint)grid.Ny && (uint)z < (uint)grid.Nz ? target.Fraction[(z * grid.Ny + y) * grid.Nx + x] : 0f;
    }
}
