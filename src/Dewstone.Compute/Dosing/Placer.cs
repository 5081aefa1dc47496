using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Dosing;

/// <summary>
/// Stands a unit in the printer's bin: turned, with its lower corner on voxel faces at the whole pitch nearest to the bin's centre, above the loose
/// layers, then shifted as the unit's <c>place</c> asks. Along x and y the unit's box edges lie half a pitch from the needle lines, so that a box
/// of whole pitches is filled by whole voxels.
/// </summary>
/// <remarks>Worked in whole half-micrometres: half a pitch of an odd number of micrometres is then exact too. Of two equally near pitches the upper is taken.</remarks>
public static class Placer
{
    /// <summary>Pitches of bed around the unit that are computed too, where the bin has them.</summary>
    private const int MarginPitches = 2;

    /// <summary>Most fine cells that are computed: target, two moisture fields and flags of them take some 3 GB.</summary>
    private const long MostCells = 250_000_000;

    /// <summary>Places the unit of a job as its own <c>place</c> asks, what that leaves free in the middle, straight and without a turn.</summary>
    /// <param name="job">Unit and printer.</param>
    /// <param name="cellsPerVoxel">Fine cells a pitch, 2 to 32.</param>
    /// <returns>Placement, lattice and cells, or the errors that forbid them.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Cells out of range.</exception>
    public static PlacementResult Place(JobDescription job, int cellsPerVoxel)
    {
        ArgumentNullException.ThrowIfNull(job);
        return Place(job, cellsPerVoxel, job.Unit.Place);
    }

    /// <summary>Places the unit of a job and lays the lattice over it.</summary>
    /// <param name="job">Unit and printer.</param>
    /// <param name="cellsPerVoxel">Fine cells a pitch, 2 to 32.</param>
    /// <param name="wish">Where the unit shall stand, whatever its own <c>place</c> says.</param>
    /// <param name="leastLayers">Layers to spread at least; 0 for no more than the unit needs.</param>
    /// <returns>Placement, lattice and cells, or the errors that forbid them.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Cells out of range.</exception>
    public static PlacementResult Place(JobDescription job, int cellsPerVoxel, PlacementWish wish, int leastLayers = 0)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(wish);
        ArgumentOutOfRangeException.ThrowIfLessThan(cellsPerVoxel, 2);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(cellsPerVoxel, 32);
        var findings = new DiagnosticBag();
        findings.AddRange(PrinterCheck.Check(job, cellsPerVoxel, wish));
        if (findings.HasErrors)
        {
            return new PlacementResult { Findings = findings.Items };
        }

        Raster raster = Raster.Over(job.Printer);
        ReefUnit unit = job.Unit;
        Point3 shift = wish.Shift ?? default;
        int turns = wish.QuarterTurns ?? 0;
        bool swapped = (turns & 1) != 0;
        Span x = PlaceAlong(
            'x', Halves(swapped ? unit.OuterBox.Y : unit.OuterBox.X), Halves(shift.X), raster.OriginXMicrometres,
            raster.PitchMicrometres, raster.FirstColumn, raster.Columns, Halves(job.Printer.Bin.SizeX.Metres), findings);
        Span y = PlaceAlong(
            'y', Halves(swapped ? unit.OuterBox.X : unit.OuterBox.Y), Halves(shift.Y), raster.OriginYMicrometres,
            raster.PitchMicrometres, raster.FirstRow, raster.Rows, Halves(job.Printer.Bin.SizeY.Metres), findings);
        (long cornerZ, int layers) = Stack(job, raster.LayerMicrometres, Halves(shift.Z), leastLayers, findings);
        if (findings.HasErrors)
        {
            return new PlacementResult { Findings = findings.Items };
        }

        bool shifted = wish.ShiftedLayers ?? false;
        var placement = new UnitPlacement
        {
            QuarterTurns = turns,
            Corner = new Point3(x.Corner / 2e6, y.Corner / 2e6, cornerZ / 2e6),
            UnitBox = unit.OuterBox,
            ShiftedLayers = shifted,
        };
        Lattice lattice = LatticeOver(job, raster, x, y, layers, shifted);
        long voxels = (long)lattice.Columns * lattice.Rows * lattice.Layers;
        if (voxels * cellsPerVoxel * cellsPerVoxel * cellsPerVoxel > MostCells)
        {
            findings.Add(PrinterFindings.TooManyCells.At(
                $"{voxels} voxels of {cellsPerVoxel} cells a side are more than {MostCells / 1_000_000} million cells",
                "use fewer cells a voxel (--cells), or a coarser grid",
                new KeyPath(DescriptionKind.Printer, "grid.pitch")));
            return new PlacementResult { Findings = findings.Items };
        }

        NoteLeftOut(lattice, raster, findings);
        return new PlacementResult
        {
            Placement = placement,
            Lattice = lattice,
            Cells = CellGrid.Over(lattice, cellsPerVoxel),
            Findings = findings.Items,
        };
    }

    private static Lattice LatticeOver(JobDescription job, Raster raster, Span x, Span y, int layers, bool shifted)
    {
        int firstColumn = Math.Max(raster.FirstColumn, x.First - MarginPitches);
        int firstRow = Math.Max(raster.FirstRow, y.First - MarginPitches);
        return new Lattice
        {
            Columns = Math.Min(raster.Columns - 1, x.Last + MarginPitches) - firstColumn + 1,
            Rows = Math.Min(raster.Rows - 1, y.Last + MarginPitches) - firstRow + 1,
            Layers = layers,
            FirstColumn = firstColumn,
            FirstRow = firstRow,
            PitchMetres = raster.PitchMicrometres / 1e6,
            LayerMetres = raster.LayerMicrometres / 1e6,
            OriginXMetres = raster.OriginXMicrometres / 1e6,
            OriginYMetres = raster.OriginYMicrometres / 1e6,
            TipDepthMetres = Raster.Micrometres(job.Printer.Needle.TipDepth) / 1e6,
            BinXMetres = Raster.Micrometres(job.Printer.Bin.SizeX) / 1e6,
            BinYMetres = Raster.Micrometres(job.Printer.Bin.SizeY) / 1e6,
            UnderLayers = job.Printer.Grid.UnderLayers,
            ShiftedLayers = shifted,
        };
    }

    // One horizontal axis, all lengths in half-micrometres: corner on the voxel face nearest to the centred one, then the shift.
    private static Span PlaceAlong(
        char axis, long length, long shift, long originMicrometres, long pitchMicrometres, int first, int count, long bin, DiagnosticBag findings)
    {
        long pitch = 2 * pitchMicrometres;
        long edge = 2 * originMicrometres - pitchMicrometres;
        long low = edge + first * pitch;
        long high = edge + count * pitch;
        long nearest = FloorDivide((bin - length) / 2 - edge + pitch / 2, pitch);
        long highest = FloorDivide(high - length - edge, pitch);
        if (highest < first)
        {
            findings.Add(PrinterFindings.DoesNotFit.At(
                $"the unit is {length / 2000.0:0.#} mm along {axis} of the bin; its needle positions water {(high - low) / 2000.0:0.#} mm",
                "use a larger bin, a smaller unit or another turn",
                new KeyPath(DescriptionKind.Unit, "box")));
            return default;
        }

        long corner = edge + Math.Clamp(nearest, first, highest) * pitch + shift;
        if (corner < low || corner + length > high)
        {
            double least = (low - (corner - shift)) / 2000.0;
            double most = (high - length - (corner - shift)) / 2000.0;
            findings.Add(PrinterFindings.DoesNotFit.At(
                $"shifted by {shift / 2000.0:0.#} mm along {axis}, the unit reaches beyond the needle positions",
                $"a shift from {least:0.#} mm to {most:0.#} mm along {axis} fits",
                new KeyPath(DescriptionKind.Unit, "place.shift")));
            return default;
        }

        return new Span(corner, (int)FloorDivide(corner - edge, pitch), (int)(-FloorDivide(-(corner + length - edge), pitch)) - 1);
    }

    // Height of the lower corner, half-micrometres, and the layers to spread.
    private static (long Corner, int Layers) Stack(JobDescription job, long layerMicrometres, long shift, int leastLayers, DiagnosticBag findings)
    {
        long layer = 2 * layerMicrometres;
        long height = Halves(job.Unit.OuterBox.Z);
        long bin = Halves(job.Printer.Bin.Height.Metres);
        long corner = job.Printer.Grid.UnderLayers * layer + shift;
        long layers = Math.Max(-FloorDivide(-(corner + height), layer), leastLayers);
        if (corner < 0)
        {
            findings.Add(PrinterFindings.TooHigh.At(
                $"shifted by {shift / 2000.0:0.#} mm along z, the unit reaches below the bin's floor",
                $"a shift of {(shift - corner) / 2000.0:0.#} mm or more along z fits",
                new KeyPath(DescriptionKind.Unit, "place.shift")));
        }
        else if (layers * layer > bin)
        {
            findings.Add(PrinterFindings.TooHigh.At(
                $"{layers} layers of {layer / 2000.0:0.#} mm ({job.Printer.Grid.UnderLayers} loose below) need {layers * layer / 2000.0:0.#} mm; the bin is {bin / 2000.0:0.#} mm high",
                "lower the unit, take fewer loose layers (grid.under), or use a higher bin",
                new KeyPath(DescriptionKind.Unit, "box")));
        }

        return (corner, (int)Math.Min(layers, int.MaxValue));
    }

    private static void NoteLeftOut(Lattice lattice, Raster raster, DiagnosticBag findings)
    {
        if (raster.FirstColumn > 0 || raster.FirstRow > 0)
        {
            findings.Add(PrinterFindings.PositionsLeftOut.At(
                $"the grid's origin is nearer than half a pitch to a bin wall: {raster.FirstColumn} columns and {raster.FirstRow} rows of it are left out",
                "set grid.origin to half a pitch or more",
                new KeyPath(DescriptionKind.Printer, "grid.origin")));
        }

        int shiftedLayer = lattice.UnderLayers + 1;
        if (!lattice.ShiftedLayers || shiftedLayer >= lattice.Layers)
        {
            return;
        }

        int leftOut = 0;
        for (int j = 0; j < lattice.Rows; j++)
        {
            for (int i = 0; i < lattice.Columns; i++)
            {
                leftOut += lattice.IsUsable(i, j, shiftedLayer) ? 0 : 1;
            }
        }

        if (leftOut > 0)
        {
            findings.Add(PrinterFindings.PositionsLeftOut.At(
                $"in each shifted layer {leftOut} positions are nearer than half a pitch to a bin wall and are left out",
                "nothing to do while the unit keeps clear of the wall",
                new KeyPath(DescriptionKind.Unit, "place.layers")));
        }
    }

    private static long Halves(double metres) => 2 * Raster.Micrometres(new Length(metres));

    private static long FloorDivide(long value, long divisor) => value / divisor - (value % divisor < 0 ? 1 : 0);

    // Lower corner in half-micrometres, and the first and last raster position whose voxel the unit touches.
    private readonly record struct Span(long Corner, int First, int Last);
}
