using Dewstone.Compute.Dosing;
using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Orders.Packing;

namespace Dewstone.Orders.Plans;

/// <summary>
/// Moves and turns the units of a packed bin aside from blocked needles: a small unit does not get over one, whatever its neighbours give. Unit by unit, and
/// round again while anything gains: the place with the least water due from blocked needles, then the fewest stations, whose times tear a unit apart, then the
/// nearest. Common practice, no source.
/// </summary>
internal sealed class SoundPlaces
{
    private const int MostRounds = 4;

    private readonly LineOnPrinter[] lines;
    private readonly BinSpace space;
    private readonly Raster raster;
    private readonly Lattice bin;
    private readonly DoseRounder needles;
    private readonly Stations stations;

    /// <summary>For the bins of one printer.</summary>
    /// <param name="lines">The lines that share bins there.</param>
    /// <param name="space">Room of the bin, in whole pitches.</param>
    public SoundPlaces(LineOnPrinter[] lines, BinSpace space)
    {
        this.lines = lines;
        this.space = space;
        JobDescription job = lines[0].Job;
        raster = Raster.Over(job.Printer);
        bin = lines[0].Doses.Lattice with { FirstColumn = raster.FirstColumn, FirstRow = raster.FirstRow, Columns = space.Columns, Rows = space.Rows, Layers = 1 };
        needles = new DoseRounder(job, bin);
        stations = Stations.Over(job.Printer);
    }

    /// <summary>Moves the units of one bin.</summary>
    /// <param name="places">Where they were packed.</param>
    /// <returns>Where they stand, in the same order.</returns>
    public UnitSpot[] Stand(IReadOnlyList<PackedPlace> places)
    {
        UnitSpot[] spots = [.. places.Select(place =>
            new UnitSpot(place.Kind, place.Turned ? 1 : 0, raster.FirstColumn + place.Column, raster.FirstRow + place.Row))];
        bool moved = true;
        for (int round = 0; round < MostRounds && moved; round++)
        {
            moved = false;
            for (int unit = 0; unit < spots.Length; unit++)
            {
                (long, int, int) now = Cost(spots[unit], spots[unit]);
                if (now.Item1 > 0 && Best(spots, unit, now) is { } better)
                {
                    spots[unit] = better;
                    moved = true;
                }
            }
        }

        return [.. spots.Select(spot => spot with { Line = lines[spot.Line].Footing.Line })];
    }

    private UnitSpot? Best(UnitSpot[] spots, int unit, (long, int, int) least)
    {
        UnitSpot packed = spots[unit];
        UnitSpot? best = null;
        for (int turns = 0; turns < (space.MayTurn ? 4 : 1); turns++)
        {
            Footprint shape = lines[packed.Line].Footprint.Turned(turns);
            (int firstColumn, int lastColumn) = space.Range(space.Columns, shape.Columns);
            (int firstRow, int lastRow) = space.Range(space.Rows, shape.Rows);
            for (int row = firstRow; row <= lastRow; row++)
            {
                for (int column = firstColumn; column <= lastColumn; column++)
                {
                    UnitSpot here = packed with { QuarterTurns = turns, Column = raster.FirstColumn + column, Row = raster.FirstRow + row };
                    if (IsFree(spots, unit, here) && Cost(here, packed) is var cost && cost.CompareTo(least) < 0)
                    {
                        (best, least) = (here, cost);
                    }
                }
            }
        }

        return best;
    }

    private bool IsFree(UnitSpot[] spots, int unit, UnitSpot here)
    {
        Footprint a = Of(here);
        for (int other = 0; other < spots.Length; other++)
        {
            Footprint b = Of(spots[other]);
            if (other != unit && a.Column < b.Column + b.Columns + space.Gap && b.Column < a.Column + a.Columns + space.Gap
                && a.Row < b.Row + b.Rows + space.Gap && b.Row < a.Row + a.Rows + space.Gap)
            {
                return false;
            }
        }

        return true;
    }

    private Footprint Of(UnitSpot spot) => lines[spot.Line].Footprint.Turned(spot.QuarterTurns) with { Column = spot.Column, Row = spot.Row };

    // Hundredths of a millilitre that blocked needles owe, stations over the footprint, quarter turns and pitches from where it was packed.
    private (long Owed, int Stations, int Moved) Cost(UnitSpot spot, UnitSpot from)
    {
        LineOnPrinter line = lines[spot.Line];
        Lattice solved = line.Doses.Lattice;
        UnitMove move = new(line.Footprint, spot.QuarterTurns, spot.Column, spot.Row);
        long owed = 0;
        for (int index = 0; index < solved.Count; index++)
        {
            int dose = line.Doses.CentiMillilitres[index];
            if (dose == 0)
            {
                continue;
            }

            int plane = solved.Columns * solved.Rows;
            (int column, int row) = move.Position(
                solved.FirstColumn + index % solved.Columns, solved.FirstRow + index % plane / solved.Columns, solved.IsShifted(index / plane));
            (column, row) = (column - bin.FirstColumn, row - bin.FirstRow);
            if (column >= 0 && row >= 0 && column < bin.Columns && row < bin.Rows && needles.IsBlocked(row * bin.Columns + column))
            {
                owed += dose;
            }
        }

        Footprint print = move.To;
        int first = stations.Seat(bin, print.Column - bin.FirstColumn, print.Row - bin.FirstRow).Station;
        int last = stations.Seat(bin, print.Column + print.Columns - 1 - bin.FirstColumn, print.Row + print.Rows - 1 - bin.FirstRow).Station;
        int across = (last - 1) % stations.Across - (first - 1) % stations.Across + 1, deep = (last - 1) / stations.Across - (first - 1) / stations.Across + 1;
        return (owed, across * deep, Math.Abs(spot.QuarterTurns - from.QuarterTurns) + Math.Abs(spot.Column - from.Column) + Math.Abs(spot.Row - from.Row));
    }
}
