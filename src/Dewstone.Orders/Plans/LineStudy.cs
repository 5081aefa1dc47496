using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Sequencing;
using Dewstone.Compute.Strength;
using Dewstone.Jobs.Bins;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;
using Dewstone.Reading;

namespace Dewstone.Orders.Plans;

/// <summary>Stands a line of an order on a printer: registered once, as written, for the ideal head that all its units are solved with, and dosed plainly.</summary>
/// <param name="Line">What was found; null when the unit cannot stand there.</param>
/// <param name="Findings">Errors of the design itself, which no other printer mends.</param>
/// <param name="Obstacle">Why the unit cannot stand on this printer; empty when it can.</param>
public sealed record LineStudy(LineOnPrinter? Line, IReadOnlyList<Diagnostic> Findings, string Obstacle)
{
    // A share is averaged over the cells; planning needs no finer ones.
    private const int Cells = 4;

    /// <summary>Studies.</summary>
    /// <param name="read">The description as read.</param>
    /// <param name="line">Line, from 0.</param>
    /// <param name="printer">Printer, from 0.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>What was found.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static LineStudy Of(ReadResult read, int line, int printer, Parallelism parallelism, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(read);
        JobDescription job = read.Job ?? throw new ArgumentException("The description has errors.", nameof(read));
        ShapeResult shape = ReefShapeBuilder.Build(job.Unit);
        Diagnostic[] design = [.. shape.Diagnostics.Concat(ShapeCheck.Check(job.Unit, shape.Shape, job.Printer.Grid.Pitch.Metres, job.Printer.Grid.LayerHeight.Metres))
            .Where(finding => finding.Severity == Severity.Error).Select(read.Sources.Place)];
        if (design.Length > 0)
        {
            return new LineStudy(null, design, "");
        }

        JobDescription ideal = job with { Printer = IdealHead.Of(job.Printer), Needles = null };
        // The place its designer saw when the unit was checked alone, needles and all.
        PlacementWish wish = Registrar.Choose(job, shape.Shape, parallelism, null, cancellation).Wish;
        PlacementResult place = Placer.Place(ideal, Cells, wish);
        if (place.Placement is { } first && wish.ShiftedLayers == true && !HasMargin(ideal.Printer, first) && job.Unit.Place.ShiftedLayers is null)
        {
            // Shifted layers water one position further, which must not fall on the wall.
            JobDescription straight = ideal with { Unit = job.Unit with { Place = job.Unit.Place with { ShiftedLayers = false } } };
            wish = Registrar.Choose(straight, shape.Shape, parallelism, null, cancellation).Wish;
            place = Placer.Place(ideal, Cells, wish);
        }

        if (place is not { Placement: { } placement, Lattice: { } lattice, Cells: { } cells })
        {
            return new LineStudy(null, [], place.Findings.First(finding => finding.Severity == Severity.Error).Message);
        }

        TargetField target = Voxelizer.Voxelize(shape.Shape, placement, cells, parallelism, null, cancellation);
        DoseResult dosed = PlainDoser.Dose(ideal, lattice, target);
        Footprint footprint = Footprint.Of(ideal.Printer, placement);
        LineOnPrinter found = new()
        {
            Footing = new Footing { Line = line, Printer = printer, Wish = wish, Columns = footprint.Columns, Rows = footprint.Rows, Layers = lattice.Layers },
            Job = job,
            MixHash = read.Inputs.First(input => input.Role == "mix").Sha256,
            Placement = placement,
            Footprint = footprint,
            Doses = dosed.Doses,
            SolidCubicMetres = target.CubicMetres,
            Ages = PlannedAges.Of(job, dosed.Nominal.WaterCement),
        };
        return new LineStudy(found, [], "");
    }

    private static bool HasMargin(Printer printer, UnitPlacement placement)
    {
        Raster raster = Raster.Over(printer);
        Footprint footprint = Footprint.Of(printer, placement);
        return footprint.Columns + 2 * Footprint.ShiftedMargin <= raster.Columns - raster.FirstColumn && footprint.Rows + 2 * Footprint.ShiftedMargin <= raster.Rows - raster.FirstRow;
    }
}
