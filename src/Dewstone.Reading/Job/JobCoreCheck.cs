using Dewstone.Model.Description;
using Dewstone.Model.Lattices;

namespace Dewstone.Reading.Job;

/// <summary>
/// Holds the numbers of a job core against each other before anything is made as large or as long as they say: the grid within the printer's bin, the cells on the
/// grid, and what the simulation's time depends on within the ranges of the descriptions.
/// </summary>
internal static class JobCoreCheck
{
    private const long MostCells = 1L << 29;
    private const double MostSeconds = 1e8;
    private const double Slack = 1e-6;

    /// <summary>Checks a core.</summary>
    /// <param name="core">The core.</param>
    /// <exception cref="InvalidDataException">A number cannot be, one line.</exception>
    public static void Check(JobCore core)
    {
        CheckPrinter(core.Description.Printer);
        CheckNeedles(core.Description.Needles?.Needles ?? []);
        CheckMix(core.Description.Mix);
        CheckLattice(core.Lattice, core.Description.Printer);
        CheckCells(core.Cells, core.Lattice);
        Hold(core.WindowSeconds is > 0.0 and <= MostSeconds, "model.window_s");
        Hold(core.Porosity is > 0.0 and < 1.0, "model.porosity");
        Hold(core.ThresholdContent is > 0.0 and < 10.0, "model.threshold_content");
        Hold(core.Placement.QuarterTurns is >= 0 and <= 3, "placement.quarter_turns");
        foreach (ReefUnit unit in core.Description.Bin.Select(binned => binned.Unit).Append(core.Description.Unit))
        {
            Hold(unit.Cavities.OfType<ScatteredCavities>().All(scatter => scatter.Count is > 0 and <= 10_000), "the count of a scatter");
        }

        foreach (var step in core.Timeline.Steps)
        {
            Hold(step.Layer >= 0 && step.Layer <= core.Lattice.Layers && step.Station is >= 0 and <= 1_000_000, "a step of the timeline");
            Hold(step.StartMilliseconds is >= 0 and < 1L << 50 && step.Milliseconds is >= 0 and < 1L << 50, "a time of the timeline");
        }
    }

    private static void CheckPrinter(Printer printer)
    {
        Hold(printer.Head.Columns is >= 1 and <= 2000 && printer.Head.Rows is >= 1 and <= 2000, "printer.head");
        Hold(printer.Grid.Pitch.Metres is >= 0.005 and <= 0.5 && printer.Grid.LayerHeight.Metres is >= 0.005 and <= 0.5, "printer.grid");
        Hold(printer.Bin.SizeX.Metres is > 0.0 and <= 100.0 && printer.Bin.SizeY.Metres is > 0.0 and <= 100.0 && printer.Bin.Height.Metres is > 0.0 and <= 100.0, "printer.bin");
        Hold(printer.Needle.Step.CubicMetres is > 0.0 and < 1.0 && printer.Needle.Flow.CubicMetresPerSecond is > 0.0 and < 10.0, "printer.needle");
        Hold(printer.Supply.Flow.CubicMetresPerSecond > 0.0, "printer.supply");
        Hold(printer.Flush is null or { EveryLayers: >= 1, Time.Seconds: >= 0.0 and <= MostSeconds }, "printer.flush");
        MachineTiming timing = printer.Timing;
        Hold(new[] { timing.Setup, timing.Spreading, timing.Move, timing.Plunge, timing.Hold, timing.Withdraw }.All(time => time.Seconds is >= 0.0 and <= MostSeconds), "printer.timing");
    }

    private static void CheckNeedles(IReadOnlyList<NeedleState> needles) =>
        Hold(needles.All(needle => needle.Gain is >= 0.1 and <= 10.0 && needle.Flow is null or { CubicMetresPerSecond: > 0.0 and < 10.0 }), "needles");

    private static void CheckMix(DryMix mix)
    {
        Hold(mix.Solids.Count > 0 && mix.Solids.All(solid => solid.GrainDensity.KilogramsPerCubicMetre is >= 100.0 and <= 30_000.0 && solid.Share is >= 0.0 and <= 1.0), "mix.solids");
        Hold(mix.LooseDensity.KilogramsPerCubicMetre is >= 100.0 and <= 10_000.0, "mix.loose_density_kg_m3");
        Hold(mix.Liquid.Density.KilogramsPerCubicMetre is >= 100.0 and <= 10_000.0, "mix.liquid");
        Hold(mix.Wetting.Exponent is >= 1 and <= 12 && mix.Wetting.AtSaturation.SquareMetresPerSecond is > 0.0 and <= 0.1 && mix.Wetting.Residual is >= 0.0 and < 1.0, "mix.wetting");
        Hold(mix.Hardening.WaterCement is > 0.0 and <= 10.0 && mix.Hardening.Window.Seconds is > 0.0 and <= MostSeconds, "mix.hardening");
    }

    private static void CheckLattice(Lattice lattice, Printer printer)
    {
        Hold(Math.Abs(lattice.PitchMetres - printer.Grid.Pitch.Metres) < Slack && Math.Abs(lattice.LayerMetres - printer.Grid.LayerHeight.Metres) < Slack, "the pitch of lattice");
        Hold(Math.Abs(lattice.BinXMetres - printer.Bin.SizeX.Metres) < Slack && Math.Abs(lattice.BinYMetres - printer.Bin.SizeY.Metres) < Slack, "lattice.bin_m");
        Hold(Math.Abs(lattice.OriginXMetres) <= 100.0 && Math.Abs(lattice.OriginYMetres) <= 100.0 && Math.Abs(lattice.FirstColumn) <= 100_000 && Math.Abs(lattice.FirstRow) <= 100_000, "the origin of lattice");
        Hold(lattice.UnderLayers >= 0 && lattice.UnderLayers <= lattice.Layers, "lattice.under_layers");
        Hold(Fits(lattice.Columns, lattice.PitchMetres, lattice.BinXMetres) && Fits(lattice.Rows, lattice.PitchMetres, lattice.BinYMetres)
            && Fits(lattice.Layers, lattice.LayerMetres, printer.Bin.Height.Metres), "the size of lattice");
    }

    // A layer that is shifted stands half a pitch over on one side, and one column more is carried for it.
    private static bool Fits(int count, double pitch, double room) => count >= 1 && (count - 2) * pitch <= room + Slack;

    private static void CheckCells(CellGrid cells, Lattice lattice)
    {
        Hold(cells.CellsPerPitch is >= 2 and <= 32 && cells.CellsPerLayer is >= 2 and <= 3200, "cells.per_pitch");
        Hold((long)lattice.Columns * lattice.Rows * lattice.Layers <= MostCells, "the size of lattice");
        Hold((long)lattice.Columns * cells.CellsPerPitch == cells.Nx && (long)lattice.Rows * cells.CellsPerPitch == cells.Ny && (long)lattice.Layers * cells.CellsPerLayer == cells.Nz
            && (long)cells.Nx * cells.Ny <= MostCells && (long)cells.Nx * cells.Ny * cells.Nz <= MostCells, "the number of cells");
        Hold(Math.Abs(cells.CellMetres * cells.CellsPerPitch - lattice.PitchMetres) < Slack && Math.Abs(cells.CellHeightMetres * cells.CellsPerLayer - lattice.LayerMetres) < Slack, "cells.cell_m");
    }

    private static void Hold(bool isSound, string what)
    {
        if (!isSound)
        {
            throw new InvalidDataException($"{what} cannot be as it says");
        }
    }
}
