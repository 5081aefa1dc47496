using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Dosing;

/// <summary>Checks that a printer can do what the unit and its own files ask, before anything is placed.</summary>
internal static class PrinterCheck
{
    /// <summary>Findings about grid, head, needles and bed.</summary>
    /// <param name="job">Unit, mix, printer, needles.</param>
    /// <param name="cellsPerVoxel">Fine cells a pitch.</param>
    /// <param name="wish">Where the unit shall stand.</param>
    /// <returns>Findings, in order.</returns>
    public static IReadOnlyList<Diagnostic> Check(JobDescription job, int cellsPerVoxel, PlacementWish wish)
    {
        var findings = new DiagnosticBag();
        Printer printer = job.Printer;
        CheckMicrometres("grid.pitch", printer.Grid.Pitch, findings);
        CheckMicrometres("grid.layer", printer.Grid.LayerHeight, findings);
        CheckMicrometres("grid.origin", printer.Grid.OriginX, findings);
        CheckMicrometres("grid.origin", printer.Grid.OriginY, findings);
        if (!findings.HasErrors)
        {
            CheckRaster(printer, findings);
        }

        if (printer.Needle.TipDepth.Metres <= 0.0 || printer.Needle.TipDepth >= printer.Grid.LayerHeight)
        {
            findings.Add(PrinterFindings.TipOutsideLayer.At(
                $"the tip stands {printer.Needle.TipDepth.Millimetres:0.#} mm below the top of a layer of {printer.Grid.LayerHeight.Millimetres:0.#} mm",
                $"give a tip_depth between 0 mm and {printer.Grid.LayerHeight.Millimetres:0.#} mm, usually half of the layer",
                new KeyPath(DescriptionKind.Printer, "needle.tip_depth")));
        }

        CheckShiftedLayers(job, cellsPerVoxel, wish, findings);
        CheckNeedleTable(job, findings);
        double porosity = job.Mix.Porosity(job.LooseDensity);
        if (porosity <= 0.0)
        {
            findings.Add(PrinterFindings.NoPores.At(
                $"a bed of {job.LooseDensity.KilogramsPerCubicMetre:0.#} kg/m3 leaves no pores between these grains (porosity {porosity:0.###})",
                "weigh a known volume of the spread bed again, and check the grain densities of the mix",
                job.Tonight?.LooseDensity is null ? new KeyPath(DescriptionKind.Mix, "loose_density") : new KeyPath(DescriptionKind.Tonight, "loose_density")));
        }

        return findings.Items;
    }

    private static void CheckMicrometres(string key, Length length, DiagnosticBag findings)
    {
        if (!Raster.IsWholeMicrometres(length) || Raster.Micrometres(length) < 0)
        {
            findings.Add(PrinterFindings.GridTooFine.At(
                $"{key} of {length.Millimetres:0.######} mm is not a whole number of micrometres",
                $"give it to a micrometre, e.g. {Math.Max(0L, Raster.Micrometres(length)) / 1000.0:0.###} mm",
                new KeyPath(DescriptionKind.Printer, key)));
        }
    }

    private static void CheckRaster(Printer printer, DiagnosticBag findings)
    {
        Raster raster = Raster.Over(printer);
        if (raster.IsEmpty)
        {
            findings.Add(PrinterFindings.NoPositions.At(
                $"a bin of {printer.Bin.SizeX.Millimetres:0.#} by {printer.Bin.SizeY.Millimetres:0.#} mm holds no position of a {printer.Grid.Pitch.Millimetres:0.###} mm grid",
                "check grid.origin, grid.pitch and bin.size",
                new KeyPath(DescriptionKind.Printer, "grid.origin")));
            return;
        }

        if (printer.Head.Columns > raster.Columns || printer.Head.Rows > raster.Rows)
        {
            findings.Add(PrinterFindings.HeadOverhangs.At(
                $"the head has {printer.Head.Columns} by {printer.Head.Rows} needles, the bin {raster.Columns} by {raster.Rows} positions",
                "check head.columns, head.rows and bin.size",
                new KeyPath(DescriptionKind.Printer, "head")));
        }

        Stations stations = Stations.Over(printer);
        if (stations.Count > 1)
        {
            findings.Add(PrinterFindings.SeveralStations.At(
                $"the head covers the bin from {stations.Count} stations ({stations.Across} along x, {stations.Deep} along y)",
                "nothing to do",
                new KeyPath(DescriptionKind.Printer, "head")));
        }
    }

    private static void CheckShiftedLayers(JobDescription job, int cellsPerVoxel, PlacementWish wish, DiagnosticBag findings)
    {
        if (wish.ShiftedLayers != true)
        {
            return;
        }

        var key = new KeyPath(DescriptionKind.Unit, "place.layers");
        if (!job.Printer.Head.CanShiftLayers)
        {
            findings.Add(PrinterFindings.HeadCannotShift.At(
                $"the head of {job.Printer.Name} cannot shift every other layer by half a pitch",
                "ask for layers: straight, or give the head layer_shift: half pitch if it can", key));
        }

        if (cellsPerVoxel % 2 != 0)
        {
            findings.Add(PrinterFindings.OddCells.At(
                $"{cellsPerVoxel} cells a voxel cannot be halved for the shifted layers", $"give --cells {cellsPerVoxel + 1}", key));
        }
    }

    private static void CheckNeedleTable(JobDescription job, DiagnosticBag findings)
    {
        HeadNeedles needles = HeadNeedles.Of(job.Printer, null);
        foreach (NeedleState state in job.Needles?.Needles ?? [])
        {
            if (!needles.Holds(state.Column, state.Row))
            {
                findings.Add(PrinterFindings.NeedleOffHead.At(
                    $"the needle table names column {state.Column}, row {state.Row}; the head has {needles.Columns} columns and {needles.Rows} rows",
                    "name the needles file of this printer, or correct head.columns and head.rows",
                    new KeyPath(DescriptionKind.Printer, "needles")));
                return;
            }
        }
    }
}
