using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Strength;

/// <summary>A box of the moisture's cells, counted along the axes of the unit: a unit turned in the bin is turned back.</summary>
internal sealed class UnitCells
{
    private readonly CellGrid grid;
    private readonly CellBox box;
    private readonly int turns;

    /// <summary>Turns a box.</summary>
    /// <param name="grid">The cells, printer frame.</param>
    /// <param name="placement">Where the unit stands.</param>
    /// <param name="box">Box of cells.</param>
    public UnitCells(CellGrid grid, UnitPlacement placement, CellBox box)
    {
        (this.grid, this.box, turns) = (grid, box, placement.QuarterTurns);
        int nx = box.LastX - box.FirstX + 1, ny = box.LastY - box.FirstY + 1;
        Count = new GridShape((turns & 1) == 0 ? nx : ny, (turns & 1) == 0 ? ny : nx, box.LastZ - box.FirstZ + 1);
        Point3 half = new(0.5 * grid.CellMetres, 0.5 * grid.CellMetres, 0.5 * grid.CellHeightMetres);
        (int x, int y) = Printer(0, 0);
        Corner = placement.ToUnit(grid.Centre(x, y, box.FirstZ)) - half;
    }

    /// <summary>Cells along each axis of the unit.</summary>
    public GridShape Count { get; }

    /// <summary>Lower corner, metres, unit frame.</summary>
    public Point3 Corner { get; }

    /// <summary>Flat index of a cell in the grid.</summary>
    /// <param name="x">Along the unit's x.</param>
    /// <param name="y">Along the unit's y.</param>
    /// <param name="z">Up.</param>
    /// <returns>The index.</returns>
    public int Index(int x, int y, int z)
    {
        (int px, int py) = Printer(x, y);
        return ((z + box.FirstZ) * grid.Ny + py) * grid.Nx + px;
    }

    /// <summary>Middle of a cell.</summary>
    /// <param name="x">Along the unit's x.</param>
    /// <param name="y">Along the unit's y.</param>
    /// <param name="z">Up.</param>
    /// <returns>Metres, unit frame.</returns>
    public Point3 Centre(int x, int y, int z) =>
        Corner + new Point3((x + 0.5) * grid.CellMetres, (y + 0.5) * grid.CellMetres, (z + 0.5) * grid.CellHeightMetres);

    // The inverse of UnitPlacement.ToUnit on cells.
    private (int X, int Y) Printer(int x, int y) => turns switch
    {
        0 => (box.FirstX + x, box.FirstY + y),
        1 => (box.LastX - y, box.FirstY + x),
        2 => (box.LastX - x, box.LastY - y),
        _ => (box.FirstX + y, box.LastY - x),
    };
}
