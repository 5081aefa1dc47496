using Dewstone.Compute.Estimation;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Inspection;
using Dewstone.Compute.Numerics;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Studies;

/// <summary>What a job comes to when its bed and its needles are not as assumed: each trial is the job's timeline with other doses, in another bed, wetted and judged.</summary>
/// <remarks>
/// Inputs are independent of each other; what does not vary here is timing, the shape of the law, its exponent and residual, and the mix from place to
/// place in one bed. The trials are wetted on coarser cells than the job, so their figures are to be compared with the job's on those cells
/// (<see cref="TrialedRequirement.Unperturbed"/>). Trials run side by side, one thread each; every figure has a slot of its own and cells are counted in whole
/// numbers, so that no result depends on the threads.
/// </remarks>
public static class TrialsStudy
{
    private static readonly Parallelism OneThread = new(1);

    /// <summary>Tries a job.</summary>
    /// <param name="question">The job.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="progress">Told after each trial; may be null.</param>
    /// <param name="cancellation">Looked at in each trial.</param>
    /// <returns>How often each requirement is met, and where the solid is doubtful.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static TrialsReport Run(TrialsQuestion question, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentOutOfRangeException.ThrowIfLessThan(question.Trials, 1, nameof(question));
        CellGrid grid = CellGrid.Over(question.Doses.Lattice, question.Cells);
        TargetField target = Voxelizer.Voxelize(question.Shape, question.Placement, grid, parallelism, null, cancellation);
        RequiredFigures required = new(question.Job.Unit, question.Shape, question.Placement, target, parallelism);
        TrialDraws draws = new(question.Job, question.Doses, question.Spreads, question.Trials, question.Seed);
        var figures = new IReadOnlyList<RequirementResult>[question.Trials + 1];
        double[][] inputs = new double[question.Trials][];
        ushort[] hardened = new ushort[grid.Count];
        int done = 0;
        ParallelOptions options = new() { MaxDegreeOfParallelism = Math.Max(1, parallelism.Threads), CancellationToken = cancellation };
        Parallel.For(0, figures.Length, options, i =>
        {
            // The last slot is the job as planned.
            bool isTrial = i < question.Trials;
            TrialSetting setting = isTrial ? draws.Of(i) : draws.Planned;
            (MoistureResult moisture, figures[i]) = Judge(question, setting, target, required, cancellation);
            if (isTrial)
            {
                inputs[i] = setting.Inputs;
                Count(moisture.Hardened, hardened);
            }

            int finished = Interlocked.Increment(ref done);
            progress?.Report(new Progress("trials", (double)finished / figures.Length));
        });
        return new TrialsReport
        {
            Trials = question.Trials,
            Seed = question.Seed,
            Grid = grid,
            Inputs = question.Spreads.Inputs(),
            Requirements = TrialTally.Of(question, figures, inputs),
            HardenedTrials = hardened,
        };
    }

    private static (MoistureResult Moisture, IReadOnlyList<RequirementResult> Figures) Judge(
        TrialsQuestion question, TrialSetting setting, TargetField target, RequiredFigures required, CancellationToken cancellation)
    {
        Lattice lattice = question.Doses.Lattice;
        BedProperties bed = BedProperties.From(setting.Job.Mix, setting.Job.LooseDensity, setting.Job.BedTemperature);
        WettingProblem problem = new()
        {
            Lattice = lattice,
            Grid = target.Grid,
            DosesCubicMetres = setting.DosesCubicMetres,
            Schedule = question.Schedule,
            Bed = bed,
        };
        MoistureResult moisture = WettingSolver.Solve(problem, OneThread, null, cancellation);
        HardenedSurface surface = HardenedSurface.Of(moisture, bed.Law, OneThread);
        SolidSummary solid = SolidMeasure.Measure(target, moisture, surface, setting.Job.Unit.Require.WaterCement);
        Estimate estimate = Estimator.Estimate(setting.Job, lattice, solid, question.Doses, question.Timeline);
        return (moisture, required.Of(setting.Job, moisture, surface, solid, estimate));
    }

    private static void Count(byte[] hardened, ushort[] counts)
    {
        lock (counts)
        {
            for (int cell = 0; cell < hardened.Length; cell++)
            {
                counts[cell] += hardened[cell];
            }
        }
    }
}
