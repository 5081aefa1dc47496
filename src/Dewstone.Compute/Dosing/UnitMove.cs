using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Dosing;

/// <summary>
/// Takes a unit from where it was solved to where it stands in a bin: turned by quarter turns within its footprint, then moved by whole pitches. Positions
/// of straight layers fall on such positions, those of shifted layers on shifted ones, and cells on cells.
/// </summary>
/// <remarks>
/// With u and v counted from the corner of the footprint of C by R pitches, a quarter turn takes (u, v) to (R - v, u). A straight position lies at
/// (i + 1/2, j + 1/2) and falls on (R - j - 1/2, i + 1/2), again straight; a shifted one at (i + 1, j + 1) falls on (R - j - 1, i + 1), again shifted, one position earlier.
/// Worked in whole half pitches, half cells and half-micrometres.
/// </remarks>
public sealed class UnitMove
{
    private readonly Footprint from;
    private readonly int turns;

    /// <summary>A move.</summary>
    /// <param name="from">Footprint as solved.</param>
    /// <param name="quarterTurns">Quarter turns, counter-clockwise seen from above, 0 to 3.</param>
    /// <param name="column">First column of the footprint afterwards, from 0.</param>
    /// <param name="row">First row of it.</param>
    public UnitMove(Footprint from, int quarterTurns, int column, int row)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(quarterTurns);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(quarterTurns, 3);
        this.from = from;
        turns = quarterTurns;
        To = from.Turned(quarterTurns) with { Column = column, Row = row };
    }

    /// <summary>Footprint afterwards.</summary>
    public Footprint To { get; }

    /// <summary>Where a position of the raster falls.</summary>
    /// <param name="column">Column as solved, from 0.</param>
    /// <param name="row">Row as solved.</param>
    /// <param name="shifted">Whether its layer is shifted.</param>
    /// <returns>Column and row afterwards; they may lie beyond the raster.</returns>
    public (int Column, int Row) Position(int column, int row, bool shifted)
    {
        int middle = shifted ? 2 : 1;
        (long u, long v) = Turn(2 * (column - from.Column) + middle, 2 * (row - from.Row) + middle, 2 * from.Columns, 2 * from.Rows, turns);
        return (To.Column + (int)((u - middle) / 2), To.Row + (int)((v - middle) / 2));
    }

    /// <summary>From which cell one came.</summary>
    /// <param name="x">Cell along x, counted from the corner of the raster's first voxel.</param>
    /// <param name="y">Cell along y, likewise.</param>
    /// <param name="perPitch">Cells a pitch.</param>
    /// <returns>The cell as solved, counted alike.</returns>
    public (int X, int Y) CellBefore(int x, int y, int perPitch)
    {
        (long u, long v) = Turn(
            2 * (x - To.Column * perPitch) + 1, 2 * (y - To.Row * perPitch) + 1, 2 * To.Columns * perPitch, 2 * To.Rows * perPitch, (4 - turns) & 3);
        return (from.Column * perPitch + (int)((u - 1) / 2), from.Row * perPitch + (int)((v - 1) / 2));
    }

    /// <summary>Where the unit stands afterwards.</summary>
    /// <param name="printer">The printer.</param>
    /// <param name="solved">Where it stood.</param>
    /// <returns>Its placement, to half a micrometre.</returns>
    public UnitPlacement Placement(Printer printer, UnitPlacement solved)
    {
        ArgumentNullException.ThrowIfNull(printer);
        ArgumentNullException.ThrowIfNull(solved);
        Raster raster = Raster.Over(printer);
        long pitch = 2 * raster.PitchMicrometres;
        long edgeX = 2 * raster.OriginXMicrometres - raster.PitchMicrometres, edgeY = 2 * raster.OriginYMicrometres - raster.PitchMicrometres;
        long x0 = Halves(solved.Corner.X) - edgeX - from.Column * pitch, y0 = Halves(solved.Corner.Y) - edgeY - from.Row * pitch;
        long x1 = x0 + Halves(solved.TurnedBox.X), y1 = y0 + Halves(solved.TurnedBox.Y);
        (long ax, long ay) = Turn(x0, y0, from.Columns * pitch, from.Rows * pitch, turns);
        (long bx, long by) = Turn(x1, y1, from.Columns * pitch, from.Rows * pitch, turns);
        return solved with
        {
            QuarterTurns = (solved.QuarterTurns + turns) & 3,
            Corner = new Point3(
                (edgeX + To.Column * pitch + Math.Min(ax, bx)) / 2e6, (edgeY + To.Row * pitch + Math.Min(ay, by)) / 2e6, solved.Corner.Z),
        };
    }

    private static (long U, long V) Turn(long u, long v, long width, long depth, int turns) => turns switch
    {
        0 => (u, v),
        1 => (depth - v, u),
        2 => (width - u, depth - v),
        _ => (v, width - u),
    };

    private static long Halves(double metres) => (long)Math.Floor(metres * 2e6 + 0.5);
}
