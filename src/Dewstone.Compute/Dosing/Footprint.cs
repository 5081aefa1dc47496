using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Dosing;

/// <summary>
/// The positions of the raster whose voxels a placed unit's outer box touches in a straight layer. In shifted layers the unit is also watered from one
/// position before and up to its last one, half a pitch further: there a footprint must keep <see cref="ShiftedMargin"/> from the raster's ends.
/// </summary>
/// <param name="Column">First column, from 0.</param>
/// <param name="Row">First row, from 0.</param>
/// <param name="Columns">Columns.</param>
/// <param name="Rows">Rows.</param>
public readonly record struct Footprint(int Column, int Row, int Columns, int Rows)
{
    /// <summary>Positions that stay free between a footprint and the raster's ends when every other layer is shifted.</summary>
    public const int ShiftedMargin = 1;

    /// <summary>The footprint of a unit.</summary>
    /// <param name="printer">The printer.</param>
    /// <param name="placement">Where it stands in its bin.</param>
    /// <returns>The positions its box touches.</returns>
    public static Footprint Of(Printer printer, UnitPlacement placement)
    {
        ArgumentNullException.ThrowIfNull(printer);
        ArgumentNullException.ThrowIfNull(placement);
        Raster raster = Raster.Over(printer);
        (int column, int columns) = Along(placement.Corner.X, placement.TurnedBox.X, raster.OriginXMicrometres, raster.PitchMicrometres);
        (int row, int rows) = Along(placement.Corner.Y, placement.TurnedBox.Y, raster.OriginYMicrometres, raster.PitchMicrometres);
        return new Footprint(column, row, columns, rows);
    }

    /// <summary>As it lies after quarter turns about the vertical, its first position where it was.</summary>
    /// <param name="quarterTurns">Quarter turns.</param>
    /// <returns>The turned footprint.</returns>
    public Footprint Turned(int quarterTurns) => (quarterTurns & 1) == 0 ? this : this with { Columns = Rows, Rows = Columns };

    // Corner in half-micrometres, as the placer works.
    private static (int First, int Count) Along(double corner, double length, long originMicrometres, long pitchMicrometres)
    {
        long pitch = 2 * pitchMicrometres, edge = 2 * originMicrometres - pitchMicrometres;
        long low = (long)Math.Floor(corner * 2e6 + 0.5) - edge, high = low + 2 * Raster.Micrometres(new Length(length));
        int first = (int)FloorDivide(low, pitch);
        return (first, (int)-FloorDivide(-high, pitch) - first);
    }

    private static long FloorDivide(long value, long divisor) => value / divisor - (value % divisor < 0 ? 1 : 0);
}
