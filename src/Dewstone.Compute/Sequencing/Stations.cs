using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Sequencing;

/// <summary>
/// Where the head stands to reach the whole raster: blocks of the head's size, row by row from the origin, numbered from 1. A last block that
/// would reach over the raster's end is pushed back so that the head stays over the bin; it then waters only the positions not yet watered.
/// </summary>
public sealed class Stations
{
    private readonly Raster raster;
    private readonly Head head;

    private Stations(Raster raster, Head head)
    {
        this.raster = raster;
        this.head = head;
        Across = Blocks(raster.Columns, head.Columns);
        Deep = Blocks(raster.Rows, head.Rows);
    }

    /// <summary>Stations along x.</summary>
    public int Across { get; }

    /// <summary>Stations along y.</summary>
    public int Deep { get; }

    /// <summary>Number of stations a layer.</summary>
    public int Count => Across * Deep;

    /// <summary>The stations of a printer.</summary>
    /// <param name="printer">The printer; its head has at least one needle.</param>
    /// <returns>Its stations.</returns>
    public static Stations Over(Printer printer)
    {
        ArgumentNullException.ThrowIfNull(printer);
        ArgumentOutOfRangeException.ThrowIfLessThan(printer.Head.Columns, 1, nameof(printer));
        ArgumentOutOfRangeException.ThrowIfLessThan(printer.Head.Rows, 1, nameof(printer));
        return new Stations(Raster.Over(printer), printer.Head);
    }

    /// <summary>The needle and station of a lattice position; the same in every layer.</summary>
    /// <param name="lattice">Lattice in the bin of the same printer.</param>
    /// <param name="i">Along x in the window, from 0.</param>
    /// <param name="j">Along y in the window, from 0.</param>
    /// <returns>Station and needle, from 1.</returns>
    public StationSeat Seat(Lattice lattice, int i, int j)
    {
        ArgumentNullException.ThrowIfNull(lattice);
        int column = lattice.FirstColumn + i;
        int row = lattice.FirstRow + j;
        int blockX = column / head.Columns;
        int blockY = row / head.Rows;
        return new StationSeat(
            blockY * Across + blockX + 1,
            column - Start(blockX, head.Columns, raster.Columns) + 1,
            row - Start(blockY, head.Rows, raster.Rows) + 1);
    }

    /// <summary>Tip of the head's needle at column 1, row 1 with the head at a station and plunged in a layer.</summary>
    /// <param name="lattice">Lattice in the bin of the same printer.</param>
    /// <param name="station">Station, from 1.</param>
    /// <param name="k">Layer, from 0.</param>
    /// <returns>Metres, printer frame.</returns>
    public Point3 HeadTip(Lattice lattice, int station, int k)
    {
        ArgumentNullException.ThrowIfNull(lattice);
        int column = Start((station - 1) % Across, head.Columns, raster.Columns);
        int row = Start((station - 1) / Across, head.Rows, raster.Rows);
        return lattice.Tip(column - lattice.FirstColumn, row - lattice.FirstRow, k);
    }

    private static int Blocks(int positions, int needles) => (positions + needles - 1) / needles;

    private static int Start(int block, int needles, int positions) => Math.Max(0, Math.Min(block * needles, positions - needles));
}
