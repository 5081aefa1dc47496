using System.Globalization;
using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>Finds the doses whose water, spread as the bed spreads it, hardens into the wanted solid.</summary>
public static class DoseSolver
{
    /// <summary>Cells a pitch for the search of a single dose.</summary>
    private const int PlainCellsPerPitch = 4;

    /// <summary>Most wetting computations for the search of a single dose.</summary>
    private const int PlainSolves = 16;

    /// <summary>Finds doses.</summary>
    /// <param name="job">Unit, mix, printer and needles.</param>
    /// <param name="shape">Wanted solid.</param>
    /// <param name="placement">Where it stands.</param>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="options">How.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="progress">Told after each wetting computation; may be null.</param>
    /// <param name="cancellation">Looked at within and between wetting computations.</param>
    /// <returns>The doses as rounded, how they were come by, and findings about what the printer cannot do.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static DoseResult Solve(
        JobDescription job, ReefShape shape, UnitPlacement placement, Lattice lattice, DoseSolverOptions options, Parallelism parallelism,
        IProgress<Progress>? progress, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(lattice);
        ArgumentNullException.ThrowIfNull(options);
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Solves, 1, nameof(options));
        NominalDose nominal = NominalDose.Choose(job, lattice);
        DoseRounder rounder = new(job, lattice);
        ForwardModel forward = new(job, lattice, parallelism);
        int cells = options.Correct ? options.CellsPerPitch : PlainCellsPerPitch;
        int solves = options.Correct ? options.Solves : PlainSolves;
        CorrectionField field = CorrectionField.Over(shape, placement, lattice, cells, parallelism, cancellation);
        double[] fractions = VoxelFractions.Average(lattice, field.Target);
        double[] shares = Array.ConvertAll(fractions, share => share < PlainDoser.FractionCut ? 0.0 : share);
        double[] plain = Array.ConvertAll(shares, share => share * nominal.Millilitres);
        DosePlan doses = rounder.Round(plain);
        double[] wished = plain;
        List<CorrectionRound> history = [];
        void Tell(CorrectionRound round)
        {
            history.Add(round);
            string detail = string.Create(CultureInfo.InvariantCulture, $"misfit {round.BestObjective:0.0} L");
            progress?.Report(new Progress("doses", Math.Min(1.0, (double)round.Solve / solves), detail));
        }

        if (doses.TotalCentiMillilitres > 0)
        {
            DoseObjective objective = new(job, field, forward, parallelism);
            if (options.Correct)
            {
                bool[] active = new bool[shares.Length];
                for (int i = 0; i < active.Length; i++)
                {
                    active[i] = shares[i] > 0.0 && !rounder.IsBlocked(i);
                }

                NeedleErrors errors = new(lattice, field.Grid, parallelism);
                (wished, doses) = new ProximityCorrection(rounder, forward, field, objective, errors).Run(plain, active, solves, Tell, cancellation);
            }
            else
            {
                double single = new BestSingleDose(rounder, forward, field, objective).Find(shares, nominal.Millilitres, solves, Tell, cancellation);
                wished = Array.ConvertAll(shares, share => share * single);
                doses = rounder.Round(wished);
            }
        }

        bool stalled = options.Correct && history.Count > 1 && history[^1].BestObjective > (1.0 - ProximityCorrection.LeastGain) * history[0].Objective;
        return new DoseResult
        {
            Doses = doses,
            Nominal = nominal,
            Limits = rounder.Limits,
            VoxelFractions = fractions,
            Findings = Findings(job, rounder, nominal, plain, wished, doses, stalled ? history : null),
            History = history,
            Stalled = stalled,
        };
    }

    // A corrected wish never exceeds the limits; where the full dose of a voxel does, that must still be said.
    private static List<Diagnostic> Findings(
        JobDescription job, DoseRounder rounder, NominalDose nominal, double[] plain, double[] wished, DosePlan doses, List<CorrectionRound>? stalled)
    {
        var wanted = new double[wished.Length];
        for (int i = 0; i < wanted.Length; i++)
        {
            wanted[i] = plain[i] > rounder.Limits.UpperMillilitres ? Math.Max(plain[i], wished[i]) : wished[i];
        }

        List<Diagnostic> findings = [.. DoseCheck.Check(job, rounder, nominal, wanted, doses)];
        if (stalled is not null)
        {
            findings.Add(WettingFindings.CorrectionStalled.At(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"After {stalled.Count} wetting computations the misfit is {stalled[^1].BestObjective:0.0} L; it began at {stalled[0].Objective:0.0} L."),
                "Look at the plates: thicker walls, a finer pitch or a wider water_cement band give the doses room."));
        }

        return findings;
    }
}
