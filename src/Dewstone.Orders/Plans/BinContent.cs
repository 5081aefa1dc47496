using Dewstone.Compute.Dosing;
using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Orders.Plans;

/// <summary>
/// What one filling of a bin takes, by the machine's own timeline for the plain doses of its units: in each layer the longest of them counts. What is taken to
/// harden is the wanted solid.
/// </summary>
public sealed record BinContent
{
    /// <summary>Printer, from 0.</summary>
    public required int Printer { get; init; }

    /// <summary>Whether every other layer is shifted.</summary>
    public required bool ShiftedLayers { get; init; }

    /// <summary>Height of the units above the loose layers, metres.</summary>
    public required double ShiftZMetres { get; init; }

    /// <summary>The units, by line.</summary>
    public required IReadOnlyList<UnitSpot> Spots { get; init; }

    /// <summary>Layers spread.</summary>
    public required int Layers { get; init; }

    /// <summary>Needle positions over the whole bin, all layers.</summary>
    public required long Positions { get; init; }

    /// <summary>Setting up and printing, minutes, rounded up.</summary>
    public required int Minutes { get; init; }

    /// <summary>Minutes from the end of printing until the weakest of its units may be lifted, rounded up.</summary>
    public required int SetMinutes { get; init; }

    /// <summary>Dry mix spread, kg.</summary>
    public required double SpreadKilograms { get; init; }

    /// <summary>Dry mix that hardens, kg.</summary>
    public required double HardenedKilograms { get; init; }

    /// <summary>Binder in it, kg.</summary>
    public required double BinderKilograms { get; init; }

    /// <summary>Loose mix that can be spread again, kg.</summary>
    public required double ReusedKilograms { get; init; }

    /// <summary>Water of all doses, cubic metres.</summary>
    public required double WaterCubicMetres { get; init; }

    /// <summary>Water flushed, cubic metres.</summary>
    public required double FlushCubicMetres { get; init; }

    /// <summary>Density of the liquid, kg/m3.</summary>
    public required double LiquidKilogramsPerCubicMetre { get; init; }

    /// <summary>Mass of the units when dug out: what hardens and the water of its doses, kg.</summary>
    public double UnitKilograms => HardenedKilograms + WaterCubicMetres * LiquidKilogramsPerCubicMetre;

    /// <summary>Works out a filling.</summary>
    /// <param name="lines">The lines on this printer, by line of the order; null where a line is not made here.</param>
    /// <param name="spots">The units, by line; at least one.</param>
    /// <returns>The content.</returns>
    public static BinContent Of(IReadOnlyList<LineOnPrinter?> lines, IReadOnlyList<UnitSpot> spots)
    {
        ArgumentNullException.ThrowIfNull(lines);
        ArgumentNullException.ThrowIfNull(spots);
        LineOnPrinter first = lines[spots[0].Line]!;
        JobDescription job = first.Job;
        Raster raster = Raster.Over(job.Printer);
        Lattice lattice = first.Doses.Lattice with
        {
            FirstColumn = raster.FirstColumn,
            FirstRow = raster.FirstRow,
            Columns = raster.Columns - raster.FirstColumn,
            Rows = raster.Rows - raster.FirstRow,
            Layers = spots.Max(spot => lines[spot.Line]!.Footing.Layers),
        };
        DosePlan doses = new() { Lattice = lattice, Steps = new int[lattice.Count], CentiMillilitres = new int[lattice.Count] };
        foreach (UnitSpot spot in spots)
        {
            Add(lines[spot.Line]!, spot, doses);
        }

        Timeline timeline = TimelineBuilder.Build(job, lattice, doses).Timeline;
        double spread = timeline.Steps.Sum(step => step.MixKilograms);
        double hardened = spots.Sum(spot => lines[spot.Line]!.SolidCubicMetres) * job.LooseDensity.KilogramsPerCubicMetre;
        double loose = Math.Max(0.0, spread - hardened);
        return new BinContent
        {
            Printer = first.Footing.Printer,
            ShiftedLayers = lattice.ShiftedLayers,
            ShiftZMetres = first.Footing.Wish.Shift?.Z ?? 0.0,
            Spots = spots,
            Layers = lattice.Layers,
            Positions = lattice.Count,
            Minutes = (int)Math.Ceiling((job.Printer.Timing.Setup.Seconds + timeline.TotalMilliseconds / 1000.0) / 60.0),
            SetMinutes = (int)Math.Ceiling(spots.Max(spot => lines[spot.Line]!.Ages.LiftDays ?? 0.0) * 24.0 * 60.0),
            SpreadKilograms = spread,
            HardenedKilograms = hardened,
            BinderKilograms = hardened * job.Mix.BinderShare,
            ReusedKilograms = (loose - Math.Min(loose, job.Printer.LooseMix.LostInBin.Kilograms)) * job.Printer.LooseMix.Reusable,
            WaterCubicMetres = spots.Sum(spot => lines[spot.Line]!.WaterCubicMetres),
            FlushCubicMetres = timeline.Steps.Where(step => step.Action == MachineAction.Flush).Sum(step => step.CentiMillilitres) / 1e8,
            LiquidKilogramsPerCubicMetre = job.Mix.Liquid.Density.KilogramsPerCubicMetre,
        };
    }

    private static void Add(LineOnPrinter line, UnitSpot spot, DosePlan into)
    {
        Lattice from = line.Doses.Lattice, bin = into.Lattice;
        UnitMove move = new(line.Footprint, spot.QuarterTurns, spot.Column, spot.Row);
        for (int index = 0; index < from.Count; index++)
        {
            int dose = line.Doses.CentiMillilitres[index];
            if (dose == 0)
            {
                continue;
            }

            int layer = index / (from.Columns * from.Rows);
            (int column, int row) = move.Position(from.FirstColumn + index % from.Columns, from.FirstRow + index / from.Columns % from.Rows, from.IsShifted(layer));
            (column, row) = (column - bin.FirstColumn, row - bin.FirstRow);
            if (column >= 0 && row >= 0 && column < bin.Columns && row < bin.Rows)
            {
                into.CentiMillilitres[bin.Index(column, row, layer)] = dose;
            }
        }
    }
}
