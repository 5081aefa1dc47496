using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Geometry;

/// <summary>Fills the fine cells with the share of each that is wanted solid.</summary>
/// <remarks>
/// Blocks of 8 x 8 x 8 cells, then 4, 2 and 1, are decided whole by the exact distances of the parts at their centre; each step down looks
/// only at the parts still in reach. A cell no bound decides is sampled at 2 x 2 x 2 points. A sample counts 1/2 - d / w, kept to 0..1,
/// where d is the signed distance and w the standard width of an eighth of the cell across the surface, sqrt(sum (g h)^2) with the slope g
/// of the eight distances: exact for faces along the axes, right in the mean for other planes, with an error of second order in cell /
/// radius for curved ones. Derived here. Threads take whole slabs of 8 cells in z; a cell's value depends on nothing but the shape and the
/// cell, and the volume is summed in double precision by planes of cells, lowest first.
/// </remarks>
public static class Voxelizer
{
    /// <summary>Fills the cells.</summary>
    /// <param name="shape">The wanted solid, unit frame.</param>
    /// <param name="placement">Where the unit stands in the printer frame.</param>
    /// <param name="grid">The cells.</param>
    /// <param name="parallelism">Threads; the result does not depend on them.</param>
    /// <param name="progress">Told after each slab; may be null.</param>
    /// <param name="cancellation">Looked at once a slab.</param>
    /// <returns>Shares 0 to 1, index order (z * Ny + y) * Nx + x, and their volume in cubic metres.</returns>
    public static TargetField Voxelize(
        ReefShape shape, UnitPlacement placement, CellGrid grid, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentNullException.ThrowIfNull(placement);
        ArgumentNullException.ThrowIfNull(grid);
        float[] fraction = new float[grid.Count];
        double[] planes = new double[grid.Nz];
        int slabs = (grid.Nz + VoxelSlab.Edge - 1) / VoxelSlab.Edge, done = 0;
        ParallelOptions options = new() { MaxDegreeOfParallelism = Math.Max(1, parallelism.Threads), CancellationToken = cancellation };
        Parallel.For(0, slabs, options, slab =>
        {
            new VoxelSlab(shape, placement, grid, fraction).Fill(slab);
            int top = Math.Min(grid.Nz, (slab + 1) * VoxelSlab.Edge);
            for (int z = slab * VoxelSlab.Edge; z < top; z++) { planes[z] = Sum(fraction.AsSpan(z * grid.Ny * grid.Nx, grid.Ny * grid.Nx)); }
            progress?.Report(new Progress("shape", (double)Interlocked.Increment(ref done) / slabs));
        });
        double cells = 0.0;
        foreach (double plane in planes) { cells += plane; }
        return new TargetField { Grid = grid, Fraction = fraction, CubicMetres = cells * grid.CellCubicMetres };
    }

    /// <summary>Volume of a shape, cubic metres, counted on cells of its own.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="cellMetres">Edge of the cells, metres, above 0.</param>
    /// <param name="parallelism">Threads; the result does not depend on them.</param>
    /// <param name="cancellation">Looked at once a slab.</param>
    /// <returns>Cubic metres.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The cell is not above 0.</exception>
    public static double Volume(ReefShape shape, double cellMetres, Parallelism parallelism, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(cellMetres);
        CellGrid grid = new()
        {
            Nx = (int)Math.Ceiling(shape.Box.X / cellMetres) + 1,
            Ny = (int)Math.Ceiling(shape.Box.Y / cellMetres) + 1,
            Nz = (int)Math.Ceiling(shape.Box.Z / cellMetres) + 1,
            CellsPerPitch = 1,
            CellsPerLayer = 1,
            Origin = new Point3(-cellMetres / 2.0, -cellMetres / 2.0, -cellMetres / 2.0),
            CellMetres = cellMetres,
            CellHeightMetres = cellMetres,
        };
        UnitPlacement placement = new() { QuarterTurns = 0, Corner = default, UnitBox = shape.Box };
        return Voxelize(shape, placement, grid, parallelism, null, cancellation).CubicMetres;
    }

    private static double Sum(ReadOnlySpan<float> plane)
    {
        double sum = 0.0;
        foreach (float share in plane) { sum += share; }
        return sum;
    }
}
