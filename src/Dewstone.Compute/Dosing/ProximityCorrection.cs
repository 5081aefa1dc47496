using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>Multiplicative fixed point with momentum: every dose grows where the bed around its tip has too little water and shrinks where it has too much.</summary>
/// <remarks>
/// v = 0.5 v + clamp(3 e, -0.35, 0.35), dose = dose x exp(v), e from <see cref="NeedleErrors"/>. Every round wets the bed with the doses AS ROUNDED and with
/// the machine's real times; the best round is kept, and the first is the doses it started from, so the result is never worse than they are.
/// Step and clamp: reference run of an independent prototype of the same model; with momentum 12 rounds on the bodies of the table end lower than 16 without.
/// </remarks>
/// <param name="rounder">Limits and pump steps.</param>
/// <param name="forward">What doses do.</param>
/// <param name="field">Wanted solid.</param>
/// <param name="objective">What is made small.</param>
/// <param name="errors">What each position lacks.</param>
internal sealed class ProximityCorrection(
    DoseRounder rounder, ForwardModel forward, CorrectionField field, DoseObjective objective, NeedleErrors errors)
{
    /// <summary>Least gain over the start that counts as one, share of its objective.</summary>
    public const double LeastGain = 0.01;

    private const double Step = 3.0;
    private const double MostStep = 0.35;
    private const double Momentum = 0.5;

    /// <summary>Rounds in a row without a better one after which the search ends.</summary>
    private const int Patience = 3;

    /// <summary>Least wish, mL: far below any needle, but not 0, from which no factor leads back.</summary>
    private const double LeastWish = 0.5;

    /// <summary>Corrects doses.</summary>
    /// <param name="start">Wished volumes to start from, mL; index order of the lattice.</param>
    /// <param name="active">Positions that may get water; index order of the lattice.</param>
    /// <param name="solves">Most wetting computations.</param>
    /// <param name="told">Told every round.</param>
    /// <param name="cancellation">Looked at in every round.</param>
    /// <returns>The best wishes and what they round to.</returns>
    public (double[] Wished, DosePlan Doses) Run(
        double[] start, bool[] active, int solves, Action<CorrectionRound> told, CancellationToken cancellation)
    {
        double[] wish = [.. start], bestWish = start, velocity = new double[start.Length], lacking = new double[start.Length];
        DosePlan bestDoses = rounder.Round(start);
        double upper = Math.Max(LeastWish, rounder.Limits.UpperMillilitres), best = double.PositiveInfinity;
        int waited = 0;
        for (int solve = 1; solve <= solves && waited < Patience; solve++)
        {
            cancellation.ThrowIfCancellationRequested();
            DosePlan doses = rounder.Round(wish);
            double reached = objective.Evaluate(forward.Wet(doses, field.Grid, cancellation));
            waited++;
            if (reached < best)
            {
                (best, bestWish, bestDoses, waited) = (reached, [.. wish], doses, 0);
            }

            told(new CorrectionRound(solve, reached, best, doses.TotalCentiMillilitres / 1e5));
            errors.Take(objective.Residual, objective.Weight, active, lacking);
            for (int i = 0; i < wish.Length; i++)
            {
                if (active[i])
                {
                    velocity[i] = Momentum * velocity[i] + Math.Clamp(Step * lacking[i], -MostStep, MostStep);
                    wish[i] = Math.Clamp(wish[i] * Numerics.Elementary.Exp(velocity[i]), LeastWish, upper);
                }
            }
        }

        return (bestWish, bestDoses);
    }
}
