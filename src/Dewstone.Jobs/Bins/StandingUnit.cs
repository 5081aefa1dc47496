using Dewstone.Compute.Dosing;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;

namespace Dewstone.Jobs.Bins;

/// <summary>A unit as it stands in its bin.</summary>
/// <param name="Placed">The unit and where it is to stand.</param>
/// <param name="Move">How its doses and cells get there.</param>
/// <param name="Binned">Where it then stands.</param>
internal sealed record StandingUnit(PlacedUnit Placed, UnitMove Move, BinnedUnit Binned)
{
    /// <summary>Stands a unit in its bin.</summary>
    /// <param name="placed">The unit.</param>
    /// <param name="printer">The bin's printer.</param>
    /// <returns>The unit standing.</returns>
    public static StandingUnit Of(PlacedUnit placed, Printer printer)
    {
        SolvedUnit solved = placed.Solved;
        UnitMove move = new(Footprint.Of(printer, solved.Placement), placed.QuarterTurns, placed.Column, placed.Row);
        return new StandingUnit(placed, move, new BinnedUnit { Mark = placed.Mark, Unit = solved.Unit, Placement = move.Placement(printer, solved.Placement) });
    }

    /// <summary>The doses that are not 0, at the position of the bin's raster where they fall.</summary>
    /// <returns>Column, row and layer, from 0, and hundredths of a millilitre; by index as solved.</returns>
    public IEnumerable<(int Column, int Row, int Layer, int CentiMillilitres)> Doses()
    {
        Lattice lattice = Placed.Solved.Lattice;
        int[] doses = Placed.Solved.CentiMillilitres;
        for (int index = 0; index < doses.Length; index++)
        {
            if (doses[index] > 0)
            {
                int layer = index / (lattice.Columns * lattice.Rows);
                (int column, int row) = Move.Position(
                    lattice.FirstColumn + index % lattice.Columns, lattice.FirstRow + index / lattice.Columns % lattice.Rows, lattice.IsShifted(layer));
                yield return (column, row, layer, doses[index]);
            }
        }
    }
}
