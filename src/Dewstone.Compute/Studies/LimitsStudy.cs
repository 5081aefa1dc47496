using Dewstone.Compute.Dosing;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Studies;

/// <summary>What a mix on a printer can hold: test blocks with holes and walls of rising size, dosed with the correction and wetted.</summary>
/// <remarks>
/// For each way of layering four blocks: holes along x and along z, walls normal to x and to z; what holds along x holds along y, since machine and mix
/// tell the two apart nowhere in such a block. Each size stands at two places against the needles, the two about which the lattice is symmetric: there
/// luck is at its best and at its worst. A block's doses answer to all its features together, so a limit may move by a step with what stands beside it.
/// </remarks>
public static class LimitsStudy
{
    private static readonly double[] Straight = [0.0, 0.5];
    private static readonly double[] UprightShifted = [0.0, 0.25];

    /// <summary>Makes the card.</summary>
    /// <param name="question">Mix and printer.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="progress">Told after each block; may be null.</param>
    /// <param name="cancellation">Looked at within each wetting.</param>
    /// <returns>The card, or findings DW40xx that forbid it.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static LimitsResult Run(LimitsQuestion question, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(question);
        bool canShift = question.Printer.Head.CanShiftLayers;
        JobDescription job = Job(question, canShift);
        IReadOnlyList<Diagnostic> findings = PrinterCheck.Check(job, question.Cells, job.Unit.Place);
        if (findings.Any(f => f.Severity == Severity.Error))
        {
            return new LimitsResult(null, findings);
        }

        NeedleGrid grid = question.Printer.Grid;
        DoseWindow window = DoseWindowStudy.Of(job, OneVoxel(question.Printer), question.WaterCementLimit);
        StudyBench bench = new(job, window.ClosingMillilitres, new DoseSolverOptions(), question.Cells);
        int ways = canShift ? 2 : 1;
        var levelHoles = new HoleLimits[ways];
        var uprightHoles = new HoleLimits[ways];
        var uprightWalls = new WallLimits[ways];
        var slabs = new WallLimits[ways];
        List<Action<Parallelism>> blocks = [];
        for (int i = 0; i < ways; i++)
        {
            int way = i;
            bool shifted = way == 1;
            blocks.Add(threads => slabs[way] = Walls(bench, Axis.Z, shifted, threads, cancellation));
            blocks.Add(threads => levelHoles[way] = Holes(bench, Axis.X, shifted, threads, cancellation));
            blocks.Add(threads => uprightHoles[way] = Holes(bench, Axis.Z, shifted, threads, cancellation));
            blocks.Add(threads => uprightWalls[way] = Walls(bench, Axis.X, shifted, threads, cancellation));
        }

        RunAll(blocks, parallelism, progress, cancellation);
        LimitsCard card = new()
        {
            Mix = question.Mix.Name,
            Printer = question.Printer.Name,
            PitchMetres = grid.Pitch.Metres,
            LayerMetres = grid.LayerHeight.Metres,
            BedTemperature = job.BedTemperature,
            LooseDensity = job.LooseDensity,
            WindowSeconds = BedProperties.From(job.Mix, job.LooseDensity, job.BedTemperature).WindowSeconds,
            CellsPerVoxel = question.Cells,
            HoleStepMetres = SizeScan.HoleStep(grid.Pitch.Metres),
            WallStepMetres = SizeScan.WallStep(grid.Pitch.Metres),
            Window = window,
            Layerings =
            [
                .. Enumerable.Range(0, ways).Select(way => new LayeringLimits
                {
                    Shifted = way == 1,
                    LevelHoles = levelHoles[way],
                    UprightHoles = uprightHoles[way],
                    UprightWalls = uprightWalls[way],
                    Slabs = slabs[way],
                }),
            ],
        };
        return new LimitsResult(card, findings);
    }

    /// <summary>Holes of one direction.</summary>
    internal static HoleLimits Holes(StudyBench bench, Axis axis, bool shifted, Parallelism parallelism, CancellationToken cancellation)
    {
        BlockFrame frame = bench.Frame(axis);
        double pitch = frame.StepU;
        double[] narrow = SizeScan.NarrowHoles(pitch), wide = SizeScan.WideHoles(pitch);
        HoleBlock block = new(frame, [Row(narrow, 0), Row(narrow, 1), Row(wide, 0), Row(wide, 1)], HolePhases(axis, shifted), bench.Cells);
        return SizeScan.Holes(block.Measure(bench.Wet(block.Unit, shifted, parallelism, cancellation), parallelism), SizeScan.HoleStep(pitch));
    }

    /// <summary>Walls of one direction.</summary>
    internal static WallLimits Walls(StudyBench bench, Axis axis, bool shifted, Parallelism parallelism, CancellationToken cancellation)
    {
        BlockFrame frame = bench.Frame(axis);
        double[] sizes = SizeScan.Walls(frame.StepA);
        WallBlock block = new(frame, [Row(sizes, 0), Row(sizes, 1)], WallPhases(axis, shifted));
        return SizeScan.Walls(block.Measure(bench.Wet(block.Unit, shifted, parallelism, cancellation)));
    }

    /// <summary>Phases of the two places along u and v: on a needle and midway between; shifted needles stand every half pitch along x and y.</summary>
    internal static (double U, double V)[] HolePhases(Axis axis, bool shifted)
    {
        double u = shifted ? 0.25 : 0.5, v = shifted && axis == Axis.Z ? 0.25 : 0.5;
        return [(0.0, 0.0), (u, v)];
    }

    /// <summary>Phases of the two places along the normal of a wall.</summary>
    internal static double[] WallPhases(Axis axis, bool shifted) => shifted && axis != Axis.Z ? UprightShifted : Straight;

    /// <summary>A lattice of one voxel of a printer, for what needs only its sizes.</summary>
    internal static Lattice OneVoxel(Printer printer) => new()
    {
        Columns = 1,
        Rows = 1,
        Layers = 1,
        FirstColumn = 0,
        FirstRow = 0,
        PitchMetres = printer.Grid.Pitch.Metres,
        LayerMetres = printer.Grid.LayerHeight.Metres,
        OriginXMetres = printer.Grid.Pitch.Metres / 2.0,
        OriginYMetres = printer.Grid.Pitch.Metres / 2.0,
        TipDepthMetres = printer.Needle.TipDepth.Metres,
        BinXMetres = printer.Grid.Pitch.Metres,
        BinYMetres = printer.Grid.Pitch.Metres,
        UnderLayers = 0,
    };

    // As a unit that asks for nothing but the limit of water/cement.
    private static JobDescription Job(LimitsQuestion question, bool shifted) => new()
    {
        Unit = new ReefUnit
        {
            Name = "test block",
            OuterBox = new Size3(question.Printer.Grid.Pitch.Metres, question.Printer.Grid.Pitch.Metres, question.Printer.Grid.LayerHeight.Metres),
            Place = new PlacementWish { ShiftedLayers = shifted },
            Require = new Requirements { WaterCement = new WaterCementBand(question.Mix.Hardening.WaterCement, question.WaterCementLimit, 1.0) },
        },
        Mix = question.Mix,
        Printer = question.Printer,
        Needles = question.Needles,
        Tonight = question.Tonight,
    };

    private static (double Size, int Place)[] Row(double[] sizes, int place) => Array.ConvertAll(sizes, size => (size, place));

    // Blocks side by side, each on its share of the threads.
    private static void RunAll(List<Action<Parallelism>> blocks, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        int done = 0, together = Math.Clamp(parallelism.Threads, 1, blocks.Count);
        Parallelism each = new(Math.Max(1, parallelism.Threads / together));
        Parallel.For(0, blocks.Count, new ParallelOptions { MaxDegreeOfParallelism = together, CancellationToken = cancellation }, i =>
        {
            blocks[i](each);
            progress?.Report(new Progress("test blocks", (double)Interlocked.Increment(ref done) / blocks.Count));
        });
    }
}
