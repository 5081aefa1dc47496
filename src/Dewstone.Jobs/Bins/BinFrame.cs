using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Jobs.Bins;

/// <summary>What a bin's units have in common: the description of the whole, the box that holds them, and the needle positions over them.</summary>
/// <param name="Description">The bin as one job.</param>
/// <param name="Placement">Where the box that holds all units stands.</param>
/// <param name="Lattice">Needle positions over all of them, two pitches more where the bin has them.</param>
internal sealed record BinFrame(JobDescription Description, UnitPlacement Placement, Lattice Lattice)
{
    private const int MarginPitches = 2;

    /// <summary>The frame of a bin.</summary>
    /// <param name="question">The bin.</param>
    /// <param name="units">Its units.</param>
    /// <returns>The frame.</returns>
    public static BinFrame Of(BinQuestion question, IReadOnlyList<StandingUnit> units)
    {
        (double x, double sizeX) = Along(units, p => p.Corner.X, b => b.X);
        (double y, double sizeY) = Along(units, p => p.Corner.Y, b => b.Y);
        (double z, double sizeZ) = Along(units, p => p.Corner.Z, b => b.Z);
        Size3 box = new(sizeX, sizeY, sizeZ);
        UnitPlacement placement = new()
        {
            QuarterTurns = 0,
            Corner = new Point3(x, y, z),
            UnitBox = box,
            ShiftedLayers = units[0].Placed.Solved.Lattice.ShiftedLayers,
        };
        JobDescription description = question.Conditions with
        {
            Unit = new ReefUnit
            {
                Name = question.Name,
                OuterBox = box,
                Place = new PlacementWish { QuarterTurns = 0, ShiftedLayers = placement.ShiftedLayers },
            },
            Bin = [.. units.Select(unit => unit.Binned)],
            Site = null,
        };
        return new BinFrame(description, placement, Over(question.Conditions.Printer, units));
    }

    private static Lattice Over(Printer printer, IReadOnlyList<StandingUnit> units)
    {
        Raster raster = Raster.Over(printer);
        int firstColumn = Math.Max(raster.FirstColumn, units.Min(u => u.Move.To.Column) - MarginPitches);
        int firstRow = Math.Max(raster.FirstRow, units.Min(u => u.Move.To.Row) - MarginPitches);
        return units[0].Placed.Solved.Lattice with
        {
            FirstColumn = firstColumn,
            FirstRow = firstRow,
            Columns = Math.Min(raster.Columns, units.Max(u => u.Move.To.Column + u.Move.To.Columns) + MarginPitches) - firstColumn,
            Rows = Math.Min(raster.Rows, units.Max(u => u.Move.To.Row + u.Move.To.Rows) + MarginPitches) - firstRow,
            Layers = units.Max(u => u.Placed.Solved.Lattice.Layers),
        };
    }

    // Lower corner and length of the box that holds all boxes, to half a micrometre.
    private static (double Corner, double Length) Along(IReadOnlyList<StandingUnit> units, Func<UnitPlacement, double> corner, Func<Size3, double> length)
    {
        long low = units.Min(u => Halves(corner(u.Binned.Placement)));
        long high = units.Max(u => Halves(corner(u.Binned.Placement)) + Halves(length(u.Binned.Placement.TurnedBox)));
        return (low / 2e6, (high - low) / 2e6);
    }

    private static long Halves(double metres) => (long)Math.Floor(metres * 2e6 + 0.5);
}
