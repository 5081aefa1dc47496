using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>A solid as a field of cells whose surface lies between them, with the distance of every cell to it.</summary>
internal sealed class SolidField
{
    private readonly HardenedSurface? hardened;

    private SolidField(CellGrid grid, float[] values, float level, Parallelism parallelism, HardenedSurface? hardened = null)
    {
        (Grid, Values, Level, this.hardened) = (grid, values, level, hardened);
        Cells = new GridShape(grid.Nx, grid.Ny, grid.Nz);
        Size = new CellSize(grid.CellMetres, grid.CellHeightMetres);
        Farthest = 0.5 * Math.Max(Math.Max(grid.Nx, grid.Ny) * grid.CellMetres, grid.Nz * grid.CellHeightMetres);
        Distances = SurfaceDistance.Of(values, Cells, Size, level, Farthest, parallelism);
    }

    /// <summary>The cells.</summary>
    public CellGrid Grid { get; }

    /// <summary>Cells along each axis.</summary>
    public GridShape Cells { get; }

    /// <summary>Edges of a cell, metres.</summary>
    public CellSize Size { get; }

    /// <summary>Values whose <see cref="Level"/> is the surface; index order of the grid.</summary>
    public float[] Values { get; }

    /// <summary>A cell belongs to the solid when its value is at or above this.</summary>
    public float Level { get; }

    /// <summary>Greatest distance told, metres: half the grid's longest side.</summary>
    public double Farthest { get; }

    /// <summary>Distance to the surface, metres, negative in the solid, at most <see cref="Farthest"/> from 0; index order of the grid.</summary>
    public float[] Distances { get; }

    /// <summary>The wanted solid: the surface where half of a cell is wanted.</summary>
    /// <param name="target">Wanted solid.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>The field.</returns>
    public static SolidField Of(TargetField target, Parallelism parallelism) => new(target.Grid, target.Fraction, 0.5f, parallelism);

    /// <summary>The hardened solid.</summary>
    /// <param name="surface">Where it ends.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>The field.</returns>
    public static SolidField Of(HardenedSurface surface, Parallelism parallelism) => new(surface.Grid, surface.Level, 0f, parallelism, surface);

    /// <summary>The surface as a mesh.</summary>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>The mesh, metres from the grid's lower corner.</returns>
    public SurfaceMesh Mesh(Parallelism parallelism) => hardened?.Mesh ?? IsoSurface.At(Values, Cells, Size, Level, parallelism);

    /// <summary>The cell a point lies in; the nearest one for a point beyond the grid.</summary>
    /// <param name="x">From the grid's corner, metres.</param>
    /// <param name="y">From the grid's corner, metres.</param>
    /// <param name="z">From the grid's corner, metres.</param>
    /// <returns>Flat index.</returns>
    public int CellAt(double x, double y, double z) => Cells.Index(
        Math.Clamp((int)(x / Size.Width), 0, Cells.Nx - 1),
        Math.Clamp((int)(y / Size.Width), 0, Cells.Ny - 1),
        Math.Clamp((int)(z / Size.Height), 0, Cells.Nz - 1));
}
