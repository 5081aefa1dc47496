using Dewstone.Compute.Geometry;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Inspection;

/// <summary>The cells whose centres lie in a region, in the smallest window of whole blocks around them.</summary>
internal sealed class RegionCells
{
    /// <summary>Cells along a block's side: blocks too far from the region are passed over whole.</summary>
    private const int Block = 8;

    private readonly GridShape all;
    private readonly int firstX;
    private readonly int firstY;
    private readonly int firstZ;

    private RegionCells(GridShape all, CellBox window)
    {
        this.all = all;
        (firstX, firstY, firstZ) = (window.FirstX, window.FirstY, window.FirstZ);
        Window = new GridShape(window.LastX - firstX + 1, window.LastY - firstY + 1, window.LastZ - firstZ + 1);
        Depths = new float[Window.Count];
    }

    /// <summary>Cells of the window along each axis.</summary>
    public GridShape Window { get; }

    /// <summary>How deep in the region each cell of the window lies, metres; 0 outside the region. Index order of the window.</summary>
    public float[] Depths { get; }

    /// <summary>Finds them.</summary>
    /// <typeparam name="TRegion">Kind of region.</typeparam>
    /// <param name="region">The region, unit frame.</param>
    /// <param name="placement">Where the unit stands.</param>
    /// <param name="grid">The cells.</param>
    /// <returns>The cells; null when the region holds none.</returns>
    public static RegionCells? Of<TRegion>(TRegion region, UnitPlacement placement, CellGrid grid)
        where TRegion : struct, IRegion
    {
        double reach = 0.5 * Block * Math.Sqrt(2.0 * grid.CellMetres * grid.CellMetres + grid.CellHeightMetres * grid.CellHeightMetres);
        List<(int X, int Y, int Z)> near = [];
        CellBox window = new(int.MaxValue, int.MaxValue, int.MaxValue, -1, -1, -1);
        for (int z = 0; z < grid.Nz; z += Block)
        {
            for (int y = 0; y < grid.Ny; y += Block)
            {
                for (int x = 0; x < grid.Nx; x += Block)
                {
                    const double Half = 0.5 * Block;
                    Point3 middle = grid.Origin + new Point3(
                        (x + Half) * grid.CellMetres, (y + Half) * grid.CellMetres, (z + Half) * grid.CellHeightMetres);
                    if (region.Distance(placement.ToUnit(middle)) < reach)
                    {
                        near.Add((x, y, z));
                        window = new CellBox(
                            Math.Min(window.FirstX, x), Math.Min(window.FirstY, y), Math.Min(window.FirstZ, z),
                            Math.Max(window.LastX, Math.Min(grid.Nx, x + Block) - 1), Math.Max(window.LastY, Math.Min(grid.Ny, y + Block) - 1),
                            Math.Max(window.LastZ, Math.Min(grid.Nz, z + Block) - 1));
                    }
                }
            }
        }

        if (near.Count == 0)
        {
            return null;
        }

        RegionCells cells = new(new GridShape(grid.Nx, grid.Ny, grid.Nz), window);
        bool any = false;
        foreach ((int x, int y, int z) in near)
        {
            any |= cells.Fill(region, placement, grid, x, y, z);
        }

        return any ? cells : null;
    }

    /// <summary>The cell of the grid that a cell of the window is.</summary>
    /// <param name="cell">Flat index in the window.</param>
    /// <returns>Flat index in the grid.</returns>
    public int InGrid(int cell) =>
        all.Index(firstX + cell % Window.Nx, firstY + cell / Window.Nx % Window.Ny, firstZ + cell / Window.Plane);

    /// <summary>Centre of a cell of the window.</summary>
    /// <param name="grid">The cells of the grid.</param>
    /// <param name="cell">Flat index in the window.</param>
    /// <returns>Metres, printer frame.</returns>
    public Point3 Centre(CellGrid grid, int cell) =>
        grid.Centre(firstX + cell % Window.Nx, firstY + cell / Window.Nx % Window.Ny, firstZ + cell / Window.Plane);

    private bool Fill<TRegion>(TRegion region, UnitPlacement placement, CellGrid grid, int x0, int y0, int z0)
        where TRegion : struct, IRegion
    {
        bool any = false;
        for (int z = z0; z < Math.Min(grid.Nz, z0 + Block); z++)
        {
            for (int y = y0; y < Math.Min(grid.Ny, y0 + Block); y++)
            {
                for (int x = x0; x < Math.Min(grid.Nx, x0 + Block); x++)
                {
                    double depth = -region.Distance(placement.ToUnit(grid.Centre(x, y, z)));
                    if (depth > 0.0)
                    {
                        any = true;
                        Depths[Window.Index(x - firstX, y - firstY, z - firstZ)] = (float)depth;
                    }
                }
            }
        }

        return any;
    }
}
