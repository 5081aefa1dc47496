using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>Finds the doses that are left after a stop, with those given before held fixed.</summary>
/// <remarks>
/// The tables' own doses are kept while they serve: while the objective with the stop is within <see cref="ServesShare"/> of that of the print in one
/// go. Else they are where the proximity correction starts from, with the pause and what was delivered in its wetting; the result is never worse on
/// its cells than the tables' own doses as the needles can still give them. The share is common practice, no source.
/// </remarks>
public static class RestSolver
{
    /// <summary>How much greater the objective may be while the tables' own doses still serve, 1.</summary>
    public const double ServesShare = 0.01;

    /// <summary>Finds the doses.</summary>
    /// <param name="job">Unit, mix, printer, needles from now on, and the stop.</param>
    /// <param name="shape">Wanted solid.</param>
    /// <param name="placement">Where it stands.</param>
    /// <param name="planned">Doses of the job in one go.</param>
    /// <param name="delivered">The same, with what was really delivered before the stop.</param>
    /// <param name="options">Cells, solves and rule of the correction.</param>
    /// <param name="parallelism">Threads; no bit of the result depends on them.</param>
    /// <param name="progress">Told after each solve; may be null.</param>
    /// <param name="cancellation">Looked at within each solve.</param>
    /// <returns>The doses.</returns>
    /// <exception cref="ArgumentException">The job has no stop.</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static RestResult Solve(
        JobDescription job, ReefShape shape, UnitPlacement placement, DosePlan planned, DosePlan delivered, DoseSolverOptions options,
        Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(planned);
        ArgumentNullException.ThrowIfNull(delivered);
        ArgumentNullException.ThrowIfNull(options);
        if (job.Stop is not { } stop)
        {
            throw new ArgumentException("The job has no stop.", nameof(job));
        }

        Lattice lattice = planned.Lattice;
        DoseRounder rounder = new(job, lattice, delivered);
        NominalDose nominal = NominalDose.Choose(job, lattice);
        CorrectionField wanted = CorrectionField.Over(
            shape, placement, CellGrid.Over(lattice, options.FineCells), job.Unit.Relief?.Amplitude.Metres ?? 0.0, options.Rule, parallelism, cancellation);
        JobDescription inOneGo = job with { Stop = null, Needles = stop.NeedlesBefore };
        CorrectionLevel level = new(job, wanted, lattice, rounder, new ForwardModel(job, lattice, parallelism), nominal, options.Rule, parallelism);
        DoseHistory history = new(options.FineSolves + 2, progress);
        double before = new DoseMisfit(wanted, options.Rule, new ForwardModel(inOneGo, lattice, parallelism), nominal, job.Unit.Require.WaterCement?.Max, parallelism)
            .Evaluate(new ForwardModel(inOneGo, lattice, parallelism).Wet(planned, wanted.Grid, cancellation));
        history.Add(level.CellsPerPitch, before, planned, DoseStepKind.Corrected);

        double[] tabled = [.. Enumerable.Range(0, lattice.Count).Select(delivered.Millilitres)];
        bool[] isFree = Free(job, lattice, rounder, level.Fractions, tabled);
        double[] start = [.. tabled.Select((dose, i) => isFree[i] ? Math.Max(dose, ProximityCorrection.LeastWishShare * rounder.Limits.LeastMillilitres) : dose)];
        ProximityCorrection correction = new(rounder, new DoseWishes(start, isFree, null), options.Rule, 0.0, history);
        double asTabled = correction.Offer(level, tabled, DoseStepKind.Corrected, cancellation);
        if (asTabled > (1.0 + ServesShare) * before)
        {
            correction.Iterate(level, options.FineSolves, isLast: true, cancellation);
        }

        return new RestResult
        {
            Doses = correction.Best!,
            Redosed = correction.Least < asTabled,
            InOneGoLitres = before,
            AsTabledLitres = asTabled,
            ChosenLitres = correction.Least,
            Solves = history.Steps.Count,
            Cells = level.CellsPerPitch,
        };
    }

    private static bool[] Free(JobDescription job, Lattice lattice, DoseRounder rounder, double[] fractions, double[] tabled)
    {
        bool[] isFree = DoneDoses.Of(job, lattice);
        for (int i = 0; i < isFree.Length; i++)
        {
            isFree[i] = !isFree[i] && !rounder.IsBlocked(i) && (tabled[i] > 0.0 || fractions[i] >= PlainDoser.FractionCut);
        }

        return isFree;
    }
}
