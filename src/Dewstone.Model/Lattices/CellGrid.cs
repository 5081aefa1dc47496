using Dewstone.Model.Quantities;

namespace Dewstone.Model.Lattices;

/// <summary>
/// The fine cells over a lattice's window, whole cells a voxel side. Index order (z * Ny + y) * Nx + x. Printer frame.
/// The window begins half a pitch before its first straight position and at the bin's floor.
/// </summary>
public sealed record CellGrid
{
    /// <summary>Cells along x.</summary>
    public required int Nx { get; init; }

    /// <summary>Cells along y.</summary>
    public required int Ny { get; init; }

    /// <summary>Cells along z.</summary>
    public required int Nz { get; init; }

    /// <summary>Cells a pitch; even when layers are shifted.</summary>
    public required int CellsPerPitch { get; init; }

    /// <summary>Cells a layer.</summary>
    public required int CellsPerLayer { get; init; }

    /// <summary>Lower corner, metres, printer frame.</summary>
    public required Point3 Origin { get; init; }

    /// <summary>Cell edge along x and y, metres.</summary>
    public required double CellMetres { get; init; }

    /// <summary>Cell edge along z, metres.</summary>
    public required double CellHeightMetres { get; init; }

    /// <summary>Number of cells.</summary>
    public int Count => Nx * Ny * Nz;

    /// <summary>Volume of a cell, cubic metres.</summary>
    public double CellCubicMetres => CellMetres * CellMetres * CellHeightMetres;

    /// <summary>Centre of a cell, metres, printer frame.</summary>
    /// <param name="x">Cell along x, from 0.</param>
    /// <param name="y">Cell along y, from 0.</param>
    /// <param name="z">Cell along z, from 0.</param>
    /// <returns>The centre.</returns>
    public Point3 Centre(int x, int y, int z) => new(
        Origin.X + (x + 0.5) * CellMetres, Origin.Y + (y + 0.5) * CellMetres, Origin.Z + (z + 0.5) * CellHeightMetres);

    /// <summary>The cells over a lattice.</summary>
    /// <param name="lattice">The lattice.</param>
    /// <param name="cellsPerPitch">Cells a pitch, 2 to 32; even when layers are shifted.</param>
    /// <returns>The grid; its cells are as near to cubes as whole cells a layer allow.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Cells a pitch out of range, or odd with shifted layers.</exception>
    public static CellGrid Over(Lattice lattice, int cellsPerPitch)
    {
        ArgumentNullException.ThrowIfNull(lattice);
        if (cellsPerPitch is < 2 or > 32 || (lattice.ShiftedLayers && cellsPerPitch % 2 != 0))
        {
            throw new ArgumentOutOfRangeException(nameof(cellsPerPitch), cellsPerPitch, "2 to 32, even when layers are shifted.");
        }

        double cell = lattice.PitchMetres / cellsPerPitch;
        int perLayer = Math.Max(2, (int)Math.Floor(lattice.LayerMetres / cell + 0.5));
        return new CellGrid
        {
            Nx = lattice.Columns * cellsPerPitch,
            Ny = lattice.Rows * cellsPerPitch,
            Nz = lattice.Layers * perLayer,
            CellsPerPitch = cellsPerPitch,
            CellsPerLayer = perLayer,
            Origin = new Point3(
                lattice.OriginXMetres + (lattice.FirstColumn - 0.5) * lattice.PitchMetres,
                lattice.OriginYMetres + (lattice.FirstRow - 0.5) * lattice.PitchMetres,
                0.0),
            CellMetres = cell,
            CellHeightMetres = lattice.LayerMetres / perLayer,
        };
    }
}
