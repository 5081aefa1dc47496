using Dewstone.Compute.Numerics;
using Dewstone.Compute.Sequencing;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Pictures.Plates;

/// <summary>What all plates of a job share, worked out once: fields, sections, blocked needles.</summary>
internal sealed class PlateSubject
{
    private readonly Stations stations;
    private readonly HeadNeedles needles;

    /// <summary>The subject of a job's plates.</summary>
    /// <param name="job">The job.</param>
    /// <param name="surface">Its predicted solid.</param>
    public PlateSubject(PredictedJob job, HardenedSurface surface)
    {
        Job = job;
        Surface = surface;
        Layout = new PlateLayout(surface.Grid);
        Boxes = job.Description.Bin.Count == 0 ? [("", job.Placement)] : [.. job.Description.Bin.Select(unit => (unit.Mark, unit.Placement))];
        Point3 corner = Boxes[0].Placement.Corner;
        Size3 box = Boxes[0].Placement.TurnedBox;
        SectionX = corner.X + box.X / 2.0;
        SectionY = corner.Y + box.Y / 2.0;
        TonesAlongX = new SectionTones(CutFields.AcrossY(surface, job.Target, SectionY), Layout.AlongX);
        TonesAlongY = new SectionTones(CutFields.AcrossX(surface, job.Target, SectionX), Layout.AlongY);
        LargestMillilitres = job.Doses.CentiMillilitres.Max() / 100.0;
        stations = Stations.Over(job.Description.Printer);
        needles = HeadNeedles.Of(job.Description.Printer, job.Description.Needles);
    }

    /// <summary>The job.</summary>
    public PredictedJob Job { get; }

    /// <summary>Its predicted solid.</summary>
    public HardenedSurface Surface { get; }

    /// <summary>Where things lie on the sheet.</summary>
    public PlateLayout Layout { get; }

    /// <summary>Where the outer boxes stand: that of the one unit, without a mark, or those of a bin's units.</summary>
    public IReadOnlyList<(string Mark, UnitPlacement Placement)> Boxes { get; }

    /// <summary>x of section B, metres, printer frame: the middle of the (first) outer box.</summary>
    public double SectionX { get; }

    /// <summary>y of section A, metres, printer frame: the middle of the (first) outer box.</summary>
    public double SectionY { get; }

    /// <summary>Section A, along x.</summary>
    public SectionTones TonesAlongX { get; }

    /// <summary>Section B, along y.</summary>
    public SectionTones TonesAlongY { get; }

    /// <summary>Largest dose of the job, mL; 0 when there is none.</summary>
    public double LargestMillilitres { get; }

    /// <summary>Stations the head works from in a layer.</summary>
    public int StationCount => stations.Count;

    /// <summary>The needle that waters a position, and where the head then stands.</summary>
    /// <param name="i">Position along x, from 0.</param>
    /// <param name="j">Position along y, from 0.</param>
    /// <returns>Station and needle, from 1.</returns>
    public StationSeat Seat(int i, int j) => stations.Seat(Job.Lattice, i, j);

    /// <summary>Whether the needle of a position gives no water.</summary>
    /// <param name="i">Position along x, from 0.</param>
    /// <param name="j">Position along y, from 0.</param>
    /// <returns>True when it is blocked.</returns>
    public bool IsBlocked(int i, int j)
    {
        StationSeat seat = Seat(i, j);
        return needles.IsBlocked(seat.Column, seat.Row);
    }

    /// <summary>Radius of a dose's disc, pixels; its area goes with the dose, and the largest of the job nearly reaches its neighbours.</summary>
    /// <param name="millilitres">The dose.</param>
    /// <returns>The radius.</returns>
    public float DiscRadius(double millilitres)
    {
        double pitch = Job.Lattice.PitchMetres * Layout.Plan.PixelsPerMetre;
        return LargestMillilitres > 0.0 ? (float)(0.36 * pitch * Math.Sqrt(millilitres / LargestMillilitres)) : 0f;
    }
}
