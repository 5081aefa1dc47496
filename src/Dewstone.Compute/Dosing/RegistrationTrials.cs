using System.Globalization;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>Judges places within a voxel by the correction of their doses, and remembers them.</summary>
internal sealed class RegistrationTrials
{
    private const int ExpectedFew = 28, ExpectedMany = 75;

    // Cells up to which the many solves take no longer than the few of a block of 900 mm.
    private const int FewCells = 200_000;

    private readonly JobDescription job;
    private readonly PlacementWish start;
    private readonly Parallelism parallelism;
    private readonly IProgress<Progress>? progress;
    private readonly CancellationToken cancellation;
    private readonly CorrectionRule rule = new();
    private readonly RegistrationField field;
    private readonly Raster raster;
    private readonly List<Trial> trials = [];
    private readonly Dictionary<bool, Trial?> layerings = [];
    private readonly Dictionary<GridPhase, Trial?> places = [];
    private NominalDose? nominal;

    /// <summary>Places around a start.</summary>
    /// <param name="job">Unit, mix, printer and needles.</param>
    /// <param name="shape">Wanted solid.</param>
    /// <param name="start">Turn, shift and layers of the place that fits and is not moved within its voxel.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="progress">Told after each judgement; may be null.</param>
    /// <param name="cancellation">Looked at within each solve.</param>
    public RegistrationTrials(
        JobDescription job, ReefShape shape, PlacementWish start, Parallelism parallelism, IProgress<Progress>? progress,
        CancellationToken cancellation)
    {
        this.job = job;
        this.start = start;
        this.parallelism = parallelism;
        this.progress = progress;
        this.cancellation = cancellation;
        field = new RegistrationField(job, shape, rule, parallelism, cancellation);
        raster = Raster.Over(job.Printer);
        PerPlace = Placer.Place(job, RegistrationField.Cells, start).Cells is { Count: <= FewCells } ? PhaseSearch.ManySolves : PhaseSearch.FewSolves;
    }

    /// <summary>Solves of every place, and of the last ones: as many as the number of cells allows in a second or so.</summary>
    public (int Each, int Last) PerPlace { get; }

    /// <summary>Places tried so far, in order.</summary>
    public IReadOnlyList<RegistrationTrial> Tried =>
        [.. trials.Select(t => new RegistrationTrial(t.Wish, t.Run.LeastAfter(t.Run.Solves, cancellation), t.Run.Solves, t.Layers))];

    /// <summary>Solves spent so far.</summary>
    public int Solves { get; private set; }

    /// <summary>Judges a way of layering by a correction that begins with plain doses, and learns from it.</summary>
    /// <param name="phase">Not moved within its voxel.</param>
    /// <param name="solves">After how many solves.</param>
    /// <returns>Objective, litres; null when the unit does not fit so.</returns>
    public double? JudgeLayers(GridPhase phase, int solves) => Layering(phase) is { } trial ? Solve([trial.Run], solves) : null;

    /// <summary>Judges ways of layering side by side that will be asked for one after the other.</summary>
    /// <param name="phases">Not moved within their voxel.</param>
    /// <param name="solves">After how many solves.</param>
    public void JudgeLayersAhead(GridPhase[] phases, int solves) => SolveAll(phases, Layering, solves);

    /// <summary>Judges a place by a correction that begins with what its way of layering taught.</summary>
    /// <param name="phase">The place.</param>
    /// <param name="solves">After how many solves.</param>
    /// <returns>Objective, litres, with what further layers must gain put on it; null when the unit does not fit there.</returns>
    public double? Judge(GridPhase phase, int solves) => Place(phase) is { } trial
        ? Solve([trial.Run], solves) * (1.0 + Registrar.LayerShare * Math.Max(0, trial.Layers - layerings[phase.ShiftedLayers]!.Layers))
        : null;

    /// <summary>Judges places side by side that will be asked for one after the other.</summary>
    /// <param name="phases">The places.</param>
    /// <param name="solves">After how many solves.</param>
    public void JudgeAhead(GridPhase[] phases, int solves) => SolveAll(phases, Place, solves);

    /// <summary>The place in full.</summary>
    /// <param name="phase">A place that fits.</param>
    /// <returns>Turn, shift and layers.</returns>
    public PlacementWish WishAt(GridPhase phase) => places.GetValueOrDefault(phase)?.Wish ?? Moved(0, 0, phase);

    private Trial? Layering(GridPhase phase)
    {
        if (!layerings.TryGetValue(phase.ShiftedLayers, out Trial? trial))
        {
            layerings[phase.ShiftedLayers] = trial = Begin(phase with { X = 0, Y = 0, Z = 0 }, null);
        }

        return trial;
    }

    private Trial? Place(GridPhase phase)
    {
        if (!places.TryGetValue(phase, out Trial? trial))
        {
            trial = JudgeLayers(phase, PhaseSearch.LayeringSolves) is null ? null : Begin(phase, Layering(phase)!.Run.Learn());
            places[phase] = trial;
        }

        return trial;
    }

    // What fits nowhere ends the search along an axis, so what comes after it is not asked for.
    private void SolveAll(GridPhase[] phases, Func<GridPhase, Trial?> trialAt, int solves) =>
        Solve([.. phases.Select(trialAt).TakeWhile(trial => trial is not null).Select(trial => trial!.Run)], solves);

    // Least objective of the last run, litres. One solve leaves a second thread idle half the time; two side by side do not.
    private double Solve(RegistrationRun[] runs, int solves)
    {
        int[] before = [.. runs.Select(run => run.Solves)];
        double[] litres = new double[runs.Length];
        ParallelOptions options = new() { MaxDegreeOfParallelism = Math.Max(1, parallelism.Threads), CancellationToken = cancellation };
        Parallel.For(0, runs.Length, options, i => litres[i] = runs[i].LeastAfter(solves, cancellation));
        for (int i = 0; i < runs.Length; i++)
        {
            if (runs[i].Solves > before[i])
            {
                Solves += runs[i].Solves - before[i];
                progress?.Report(new Progress(
                    "placing", Math.Min(1.0, (double)Solves / (PerPlace == PhaseSearch.ManySolves ? ExpectedMany : ExpectedFew)),
                    string.Create(CultureInfo.InvariantCulture, $"misfit {litres[i]:0.0} L")));
            }
        }

        return litres.LastOrDefault();
    }

    private Trial? Begin(GridPhase phase, LearnedDoses? learned)
    {
        foreach (int x in Forth(phase.X))
        {
            foreach (int y in Forth(phase.Y))
            {
                PlacementWish wish = Moved(x, y, phase);
                if (Placer.Place(job, RegistrationField.Cells, wish) is { Placement: { } placement, Lattice: { } lattice, Cells: { } cells })
                {
                    NominalDose dose = nominal ??= NominalDose.Choose(job, lattice);
                    Trial trial = new(wish, lattice.Layers, new RegistrationRun(job, field.Over(placement, cells), lattice, dose, rule, learned, parallelism));
                    trials.Add(trial);
                    return trial;
                }
            }
        }

        return null;
    }

    // The same place within a voxel, forth or back, whichever fits first: the shorter way first.
    private static int[] Forth(int quarters) => quarters switch { 0 => [0], 1 => [1, -3], 2 => [2, -2], _ => [-1, 3] };

    private PlacementWish Moved(int x, int y, GridPhase phase) => start with
    {
        Shift = start.Shift + new Point3(
            Metres(x, raster.PitchMicrometres), Metres(y, raster.PitchMicrometres), Metres(phase.Z, raster.LayerMicrometres)),
        ShiftedLayers = phase.ShiftedLayers,
    };

    private static double Metres(int quarters, long micrometres) => Math.Floor(quarters * micrometres / 4.0 + 0.5) / 1e6;

    private sealed record Trial(PlacementWish Wish, int Layers, RegistrationRun Run);
}
