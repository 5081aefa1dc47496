using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Pictures.Plates;

/// <summary>What all plates of a job share, worked out once: fields, sections, blocked needles.</summary>
internal sealed class PlateSubject
{
    private readonly HashSet<(int Column, int Row)> blocked;

    /// <summary>The subject of a job's plates.</summary>
    /// <param name="job">The job.</param>
    /// <param name="surface">Its predicted solid.</param>
    public PlateSubject(CompiledJob job, HardeningSurface surface)
    {
        Job = job;
        Surface = surface;
        Layout = new PlateLayout(surface.Grid);
        Point3 corner = job.Placement.Corner;
        Size3 box = job.Placement.TurnedBox;
        SectionX = corner.X + box.X / 2.0;
        SectionY = corner.Y + box.Y / 2.0;
        CutAlongX = CutFields.AcrossY(surface, job.Target, SectionY);
        CutAlongY = CutFields.AcrossX(surface, job.Target, SectionX);
        LargestMillilitres = job.Doses.CentiMillilitres.Max() / 100.0;
        blocked = [.. (job.Description.Needles?.Needles ?? [])
            .Where(needle => needle.Condition == NeedleCondition.Blocked)
            .Select(needle => (needle.Column, needle.Row))];
    }

    /// <summary>The job.</summary>
    public CompiledJob Job { get; }

    /// <summary>Its predicted solid.</summary>
    public HardeningSurface Surface { get; }

    /// <summary>Where things lie on the sheet.</summary>
    public PlateLayout Layout { get; }

    /// <summary>x of section B, metres, printer frame: the middle of the outer box.</summary>
    public double SectionX { get; }

    /// <summary>y of section A, metres, printer frame: the middle of the outer box.</summary>
    public double SectionY { get; }

    /// <summary>Section A, along x.</summary>
    public CutFields CutAlongX { get; }

    /// <summary>Section B, along y.</summary>
    public CutFields CutAlongY { get; }

    /// <summary>Largest dose of the job, mL; 0 when there is none.</summary>
    public double LargestMillilitres { get; }

    /// <summary>Column of the head's needle that serves a position, from 1: the head steps by its own width from station to station.</summary>
    /// <param name="i">Position along x, from 0.</param>
    /// <returns>The column.</returns>
    public int HeadColumn(int i) => (Job.Lattice.FirstColumn + i) % Job.Description.Printer.Head.Columns + 1;

    /// <summary>Row of the head's needle that serves a position, from 1.</summary>
    /// <param name="j">Position along y, from 0.</param>
    /// <returns>The row.</returns>
    public int HeadRow(int j) => (Job.Lattice.FirstRow + j) % Job.Description.Printer.Head.Rows + 1;

    /// <summary>Whether the needle of a position gives no water.</summary>
    /// <param name="i">Position along x, from 0.</param>
    /// <param name="j">Position along y, from 0.</param>
    /// <returns>True when it is blocked.</returns>
    public bool IsBlocked(int i, int j) => blocked.Count > 0 && blocked.Contains((HeadColumn(i), HeadRow(j)));

    /// <summary>Radius of a dose's disc, pixels; its area goes with the dose, and the largest of the job nearly reaches its neighbours.</summary>
    /// <param name="millilitres">The dose.</param>
    /// <returns>The radius.</returns>
    public float DiscRadius(double millilitres)
    {
        double pitch = Job.Lattice.PitchMetres * Layout.Plan.PixelsPerMetre;
        return LargestMillilitres > 0.0 ? (float)(0.36 * pitch * Math.Sqrt(millilitres / LargestMillilitres)) : 0f;
    }
}
