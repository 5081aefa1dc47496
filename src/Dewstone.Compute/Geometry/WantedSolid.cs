using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Geometry;

/// <summary>The wanted solid of a whole job: of its one unit, or of all units of a bin together.</summary>
public static class WantedSolid
{
    /// <summary>Fills the cells.</summary>
    /// <param name="job">What is wanted.</param>
    /// <param name="placement">Where the unit of a single job stands, printer frame; those of a bin bring their own.</param>
    /// <param name="grid">The cells.</param>
    /// <param name="parallelism">Threads; the result does not depend on them.</param>
    /// <param name="progress">Told after each slab; may be null.</param>
    /// <param name="cancellation">Looked at once a slab.</param>
    /// <returns>Shares 0 to 1, index order (z * Ny + y) * Nx + x, and their volume in cubic metres; where the boxes of two units overlap, the larger share.</returns>
    public static TargetField Voxelize(
        JobDescription job, UnitPlacement placement, CellGrid grid, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(grid);
        if (job.Bin.Count == 0)
        {
            return Voxelizer.Voxelize(ReefShapeBuilder.Build(job.Unit).Shape, placement, grid, parallelism, progress, cancellation);
        }

        float[] fraction = new float[grid.Count];
        double cubicMetres = 0.0;
        foreach (BinnedUnit unit in job.Bin)
        {
            (CellGrid window, int x, int y, int z) = Window(grid, unit.Placement);
            TargetField part = Voxelizer.Voxelize(ReefShapeBuilder.Build(unit.Unit).Shape, unit.Placement, window, parallelism, progress, cancellation);
            cubicMetres += part.CubicMetres;
            for (int row = 0; row < window.Ny * window.Nz; row++)
            {
                Span<float> to = fraction.AsSpan(((z + row / window.Ny) * grid.Ny + y + row % window.Ny) * grid.Nx + x, window.Nx);
                ReadOnlySpan<float> from = part.Fraction.AsSpan(row * window.Nx, window.Nx);
                for (int i = 0; i < to.Length; i++)
                {
                    to[i] = Math.Max(to[i], from[i]);
                }
            }
        }

        return new TargetField { Grid = grid, Fraction = fraction, CubicMetres = cubicMetres };
    }

    // The cells of a grid that a unit's box touches, one more on every side.
    private static (CellGrid Window, int X, int Y, int Z) Window(CellGrid grid, UnitPlacement placement)
    {
        Size3 box = placement.TurnedBox;
        (int x, int nx) = Along(placement.Corner.X - grid.Origin.X, box.X, grid.CellMetres, grid.Nx);
        (int y, int ny) = Along(placement.Corner.Y - grid.Origin.Y, box.Y, grid.CellMetres, grid.Ny);
        (int z, int nz) = Along(placement.Corner.Z - grid.Origin.Z, box.Z, grid.CellHeightMetres, grid.Nz);
        CellGrid window = grid with
        {
            Nx = nx,
            Ny = ny,
            Nz = nz,
            Origin = grid.Origin + new Point3(x * grid.CellMetres, y * grid.CellMetres, z * grid.CellHeightMetres),
        };
        return (window, x, y, z);
    }

    private static (int First, int Count) Along(double low, double length, double cell, int cells)
    {
        int first = Math.Clamp((int)Math.Floor(low / cell) - 1, 0, cells - 1), last = Math.Clamp((int)Math.Floor((low + length) / cell) + 1, first, cells - 1);
        return (first, last - first + 1);
    }
}
