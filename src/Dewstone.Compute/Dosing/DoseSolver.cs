using System.Globalization;
using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>Finds the doses of a job: plain ones, or corrected so that what hardens is what was wanted.</summary>
/// <remarks>
/// First the best plain dose on coarse cells; then, unless only that is asked for, the proximity correction on coarse and on fine cells, with the best
/// plain doses as the ones to beat on the fine ones. The number of solves is bounded: at most 12 plain ones, those of the options, and one.
/// </remarks>
public static class DoseSolver
{
    /// <summary>Gain in the objective over plain doses below which the correction counts as stalled, share of the plain objective.</summary>
    public const double StallShare = 0.01;

    private const int ExpectedPlainSolves = 8;

    /// <summary>Finds the doses.</summary>
    /// <param name="job">Unit, mix, printer and needles.</param>
    /// <param name="shape">Wanted solid.</param>
    /// <param name="placement">Where it stands.</param>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="options">How.</param>
    /// <param name="parallelism">Threads; no bit of the result depends on them.</param>
    /// <param name="progress">Told after each solve, with the misfit; may be null.</param>
    /// <param name="cancellationToken">Looked at within each solve.</param>
    /// <returns>Doses as rounded, with the history of solves and findings.</returns>
    /// <exception cref="ArgumentException">Doses to start from that do not fit the lattice.</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static DoseResult Solve(
        JobDescription job, ReefShape shape, UnitPlacement placement, Lattice lattice, DoseSolverOptions options, Parallelism parallelism,
        IProgress<Progress>? progress, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentNullException.ThrowIfNull(placement);
        ArgumentNullException.ThrowIfNull(lattice);
        ArgumentNullException.ThrowIfNull(options);
        if (options.LikeMillilitres is { } given && given.Count != lattice.Count)
        {
            throw new ArgumentException($"{given.Count} doses to start from, {lattice.Count} positions.", nameof(options));
        }

        DoseRounder rounder = new(job, lattice);
        ForwardModel forward = new(job, lattice, parallelism);
        NominalDose nominal = NominalDose.Choose(job, lattice);
        CorrectionLevel Level(int cells) => new(
            job, shape, placement, lattice, rounder, forward, nominal, options.Rule, cells, parallelism, cancellationToken);

        int solves = options.Correct ? options.CoarseSolves + options.FineSolves + 1 : 0;
        DoseHistory history = new(ExpectedPlainSolves + solves, progress);
        CorrectionLevel coarse = Level(options.CoarseCells);
        if (rounder.Round(PlainDoseSearch.Wishes(coarse.Fractions, nominal.Millilitres)).TotalCentiMillilitres == 0)
        {
            return Result(PlainDoseSearch.Wishes(coarse.Fractions, nominal.Millilitres), coarse, nominal.Millilitres, false);
        }

        double plain = PlainDoseSearch.Find(JudgePlain, nominal.Millilitres, rounder.Limits);
        CorrectionLevel fine = options.FineCells == options.CoarseCells ? coarse : Level(options.FineCells);
        if (!options.Correct)
        {
            double[] plainWishes = PlainDoseSearch.Wishes(fine.Fractions, plain);
            DosePlan plainPlan = rounder.Round(plainWishes);
            history.Add(fine.CellsPerPitch, fine.Judge(plainPlan, cancellationToken), plainPlan, DoseStepKind.Plain);
            return Result(plainWishes, fine, plain, false);
        }

        double start = Math.Min(rounder.Limits.UpperMillilitres, options.Rule.StartShare * Math.Min(nominal.ClosingMillilitres, nominal.Millilitres));
        DoseWishes wishes = Start(options, rounder, fine.Fractions, start, MayMove(options, placement, lattice, coarse, fine, parallelism, cancellationToken));
        ProximityCorrection correction = new(rounder, wishes, options.Rule, options.LikeMillilitres is null ? 0.0 : options.LikeWeight, history);
        correction.Iterate(coarse, options.CoarseSolves, isLast: false, cancellationToken);
        if (fine != coarse)
        {
            correction.Forget();
        }

        double toBeat = correction.Offer(fine, PlainDoseSearch.Wishes(fine.Fractions, plain), DoseStepKind.Plain, cancellationToken);
        if (options.LikeMillilitres is not null)
        {
            correction.Forget();
        }

        correction.Iterate(fine, options.FineSolves, isLast: true, cancellationToken);
        return Result(correction.BestWishes, fine, plain, correction.Least > (1.0 - StallShare) * toBeat);

        double JudgePlain(double dose)
        {
            DosePlan plan = rounder.Round(PlainDoseSearch.Wishes(coarse.Fractions, dose));
            double objective = coarse.Judge(plan, cancellationToken);
            history.Add(coarse.CellsPerPitch, objective, plan, DoseStepKind.Plain);
            return objective;
        }

        // A corrected wish never exceeds the limits; where the full dose of a voxel does, that must still be said.
        double[] AsWished(double[] wanted, double[] fractions) =>
        [
            .. PlainDoseSearch.Wishes(fractions, nominal.Millilitres).Zip(
                wanted, (plainWish, wish) => plainWish > rounder.Limits.UpperMillilitres ? Math.Max(plainWish, wish) : wish),
        ];

        DoseResult Result(double[] wanted, CorrectionLevel level, double plainMillilitres, bool stalled)
        {
            double[] fractions = level.Fractions;
            DosePlan doses = rounder.Round(wanted);
            List<Diagnostic> findings = [.. DoseCheck.Check(job, rounder, nominal, AsWished(wanted, fractions), doses)];
            if (stalled)
            {
                findings.Add(WettingFindings.CorrectionStalled.At(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"after {history.Steps.Count} wetting computations the corrected doses are less than {StallShare * 100.0:0.#} % better than the best plain ones"),
                    "look at the plates: thicker walls, a finer pitch or a wider water_cement band give the doses room"));
            }

            return new DoseResult
            {
                Doses = doses,
                Nominal = nominal,
                PlainMillilitres = plainMillilitres,
                Plain = rounder.Round(PlainDoseSearch.Wishes(fractions, plainMillilitres)),
                Limits = rounder.Limits,
                VoxelFractions = fractions,
                JudgedOn = level.Target,
                Findings = findings,
                History = history.Steps,
                Stalled = stalled,
            };
        }
    }

    // Blocked needles keep their plain wish: it is reported as lost; their neighbours answer for it.
    private static DoseWishes Start(DoseSolverOptions options, DoseRounder rounder, double[] fractions, double start, bool[]? mayMove)
    {
        double[] wishes = PlainDoseSearch.Wishes(fractions, start);
        var isFree = new bool[wishes.Length];
        for (int i = 0; i < wishes.Length; i++)
        {
            bool waters = wishes[i] > 0.0 && !rounder.IsBlocked(i);
            isFree[i] = waters && (mayMove is null || mayMove[i]);
            if (options.LikeMillilitres is { } like && !rounder.IsBlocked(i) && (like[i] > 0.0 || !isFree[i]))
            {
                wishes[i] = like[i];
            }
        }

        return new DoseWishes(wishes, isFree, options.LikeMillilitres is null ? null : [.. wishes]);
    }

    private static bool[]? MayMove(
        DoseSolverOptions options, UnitPlacement placement, Lattice lattice, CorrectionLevel coarse, CorrectionLevel fine, Parallelism parallelism,
        CancellationToken cancellation)
    {
        if (options is not { LikeMillilitres: not null, LikeShape: { } before })
        {
            return null;
        }

        bool[] near = DoseNeighbourhood.OfChange(before, placement, lattice, coarse.Target, parallelism, cancellation);
        bool[] nearFine = DoseNeighbourhood.OfChange(before, placement, lattice, fine.Target, parallelism, cancellation);
        return [.. near.Zip(nearFine, (a, b) => a || b)];
    }
}
