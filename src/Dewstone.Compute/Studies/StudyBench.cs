using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Sequencing;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Studies;

/// <summary>Doses and wets test blocks on a mix and a printer.</summary>
/// <remarks>
/// A block stands alone in a bin just large enough, under a head that covers it, so that the real bin and the stations of the real head do not cut into
/// it. All needles are sound. The machine's times are the printer's; where its head works a layer from several stations, the time of the others at the
/// closing dose is added to the spreading, so that layers follow each other as they do in a full bin. What such a head takes from the window of the
/// stations it comes to last is not in it.
/// </remarks>
internal sealed class StudyBench
{
    // The placer computes two pitches of loose bed around a unit.
    private const int MarginPitches = 4;
    private readonly JobDescription like;
    private readonly BedProperties bed;
    private readonly MachineTiming timing;
    private readonly DoseSolverOptions options;

    /// <summary>A bench.</summary>
    /// <param name="like">Mix, printer and tonight; of its unit only the water/cement band is used.</param>
    /// <param name="closingMillilitres">Dose that closes the pockets, mL.</param>
    /// <param name="options">How doses are looked for.</param>
    /// <param name="cells">Cells a voxel side on which blocks are judged.</param>
    public StudyBench(JobDescription like, double closingMillilitres, DoseSolverOptions options, int cells)
    {
        this.like = like;
        this.options = options;
        Cells = cells;
        bed = BedProperties.From(like.Mix, like.LooseDensity, like.BedTemperature);
        MachineTiming t = like.Printer.Timing;
        double station = t.Move.Seconds + t.Plunge.Seconds + closingMillilitres / like.Printer.Needle.Flow.MillilitresPerSecond + t.Hold.Seconds + t.Withdraw.Seconds;
        timing = t with { Spreading = new Duration(t.Spreading.Seconds + (Stations.Over(like.Printer).Count - 1) * station) };
    }

    /// <summary>Cells a voxel side.</summary>
    public int Cells { get; }

    /// <summary>Directions of a block of this printer.</summary>
    /// <param name="axis">What its features are about.</param>
    /// <returns>The frame.</returns>
    public BlockFrame Frame(Axis axis) => new(axis, like.Printer.Grid, like.Printer.Needle.TipDepth.Metres);

    /// <summary>Doses a block with the correction and wets it.</summary>
    /// <param name="unit">The block.</param>
    /// <param name="shifted">Whether every other layer is shifted.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="cancellation">Looked at within each wetting.</param>
    /// <returns>The block as it sets.</returns>
    public WettedBlock Wet(ReefUnit unit, bool shifted, Parallelism parallelism, CancellationToken cancellation)
    {
        JobDescription job = like with
        {
            Unit = unit with
            {
                Place = new PlacementWish { QuarterTurns = 0, ShiftedLayers = shifted },
                Require = new Requirements { WaterCement = like.Unit.Require.WaterCement },
            },
            Printer = PrinterFor(unit.OuterBox),
            Needles = null,
        };
        PlacementResult place = Placer.Place(job, Cells);
        if (place is not { Placement: { } placement, Lattice: { } lattice, Cells: { } grid })
        {
            throw new InvalidOperationException($"A test block was not placed: {place.Findings[0].Message}.");
        }

        ReefShape shape = ReefShapeBuilder.Build(job.Unit).Shape;
        DosePlan doses = DoseSolver.Solve(job, shape, placement, lattice, options, parallelism, null, cancellation).Doses;
        return new WettedBlock(new ForwardModel(job, lattice, parallelism).Wet(doses, grid, cancellation), placement.Corner, bed);
    }

    private Printer PrinterFor(Size3 box)
    {
        NeedleGrid grid = like.Printer.Grid;
        double pitch = grid.Pitch.Metres, layer = grid.LayerHeight.Metres;
        int columns = (int)Math.Ceiling(box.X / pitch - 1e-9) + MarginPitches, rows = (int)Math.Ceiling(box.Y / pitch - 1e-9) + MarginPitches;
        return like.Printer with
        {
            Bin = new Bin(new Length(columns * pitch), new Length(rows * pitch), new Length(BlockFrame.Whole(box.Z, layer) + (grid.UnderLayers + 1) * layer)),
            Grid = grid with { OriginX = new Length(pitch / 2.0), OriginY = new Length(pitch / 2.0) },
            Head = like.Printer.Head with { Columns = columns, Rows = rows },
            Timing = timing,
        };
    }
}
