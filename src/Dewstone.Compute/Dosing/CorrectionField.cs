using Dewstone.Compute.Geometry;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>The wanted solid on the cells of one level of the correction, with what each cell's misfit weighs.</summary>
internal sealed class CorrectionField
{
    private CorrectionField(TargetField target, float[] distance)
    {
        Target = target;
        Distance = distance;
    }

    /// <summary>The wanted solid.</summary>
    public TargetField Target { get; }

    /// <summary>The cells.</summary>
    public CellGrid Grid => Target.Grid;

    /// <summary>Distance to the wanted surface, metres, negative in the solid; to a cell.</summary>
    public float[] Distance { get; }

    /// <summary>Lays the wanted solid on cells.</summary>
    /// <param name="shape">Wanted solid.</param>
    /// <param name="placement">Where it stands.</param>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="cellsPerPitch">Cells a pitch.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="cancellation">Looked at once a slab.</param>
    /// <returns>The field.</returns>
    public static CorrectionField Over(
        ReefShape shape, UnitPlacement placement, Lattice lattice, int cellsPerPitch, Parallelism parallelism, CancellationToken cancellation)
    {
        CellGrid grid = CellGrid.Over(lattice, cellsPerPitch);
        return Of(Voxelizer.Voxelize(shape, placement, grid, parallelism, null, cancellation), parallelism);
    }

    /// <summary>Takes a wanted solid as it lies.</summary>
    /// <param name="target">The solid.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>The field.</returns>
    public static CorrectionField Of(TargetField target, Parallelism parallelism)
    {
        CellGrid grid = target.Grid;
        GridShape cells = new(grid.Nx, grid.Ny, grid.Nz);
        CellSize size = new(grid.CellMetres, grid.CellHeightMetres);
        byte[] solid = new byte[grid.Count];
        for (int i = 0; i < solid.Length; i++)
        {
            solid[i] = target.Fraction[i] >= 0.5f ? (byte)1 : (byte)0;
        }

        float[] distance = DistanceTransform.Squared(solid, cells, size, Phase.Set, OutsideCells.Ignored, parallelism);
        float[] depth = DistanceTransform.Squared(solid, cells, size, Phase.Empty, OutsideCells.Empty, parallelism);
        float half = (float)size.HalfMeanEdge;
        for (int i = 0; i < solid.Length; i++)
        {
            distance[i] = solid[i] == 0 ? MathF.Sqrt(distance[i]) - half : half - MathF.Sqrt(depth[i]);
        }

        return new CorrectionField(target, distance);
    }
}
