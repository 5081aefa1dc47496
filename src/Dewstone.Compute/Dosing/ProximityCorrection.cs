using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>
/// Moves doses until what hardens is what was wanted, with the true wetting and the machine's real times in the loop: neighbouring doses add up, so the
/// middle of a solid wants less than its edges and thin walls. See <see cref="CorrectionRule"/> for the objective and the step.
/// </summary>
/// <remarks>Every iterate is rounded to pump steps before it is judged, and the best judged one is kept: the result is never worse than any plan tried on its cells.</remarks>
/// <param name="rounder">Limits and steps.</param>
/// <param name="wishes">Where to start; moved.</param>
/// <param name="rule">The step.</param>
/// <param name="likeWeight">Pull towards the doses to stay near.</param>
/// <param name="history">Takes every solve.</param>
internal sealed class ProximityCorrection(DoseRounder rounder, DoseWishes wishes, CorrectionRule rule, double likeWeight, DoseHistory history)
{
    /// <summary>Least wish, share of the least dose: small enough to be rounded to nothing, large enough to come back.</summary>
    public const double LeastWishShare = 0.25;

    /// <summary>Best plan on the last cells used; null before the first solve.</summary>
    public DosePlan? Best { get; private set; }

    /// <summary>Wishes of the best plan, mL.</summary>
    public double[] BestWishes { get; private set; } = [];

    /// <summary>Its objective, litres.</summary>
    public double Least { get; private set; } = double.PositiveInfinity;

    /// <summary>Offers a plan from elsewhere as one to beat on the cells of a level.</summary>
    /// <param name="level">The level.</param>
    /// <param name="candidate">Wanted volumes, mL.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>Its objective, litres.</returns>
    public double Offer(CorrectionLevel level, double[] candidate, DoseStepKind kind, CancellationToken cancellation)
    {
        DosePlan plan = rounder.Round(candidate);
        double objective = level.Judge(plan, cancellation);
        history.Add(level.CellsPerPitch, objective, plan, kind);
        if (objective < Least)
        {
            (Best, BestWishes, Least) = (plan, [.. candidate], objective);
        }

        return objective;
    }

    /// <summary>Forgets the best plan: objectives on other cells do not compare.</summary>
    public void Forget() => (Best, Least) = (null, double.PositiveInfinity);

    /// <summary>Iterates on one level.</summary>
    /// <param name="level">The level.</param>
    /// <param name="solves">Solves, 0 or more.</param>
    /// <param name="isLast">Whether no level follows, so that the last solve need not be followed by a step.</param>
    /// <param name="cancellation">Looked at within.</param>
    public void Iterate(CorrectionLevel level, int solves, bool isLast, CancellationToken cancellation)
    {
        double least = LeastWishShare * rounder.Limits.LeastMillilitres;
        for (int solve = 1; solve <= solves; solve++)
        {
            Offer(level, wishes.Millilitres, DoseStepKind.Corrected, cancellation);
            if (solve < solves || !isLast)
            {
                level.Gather(wishes.IsFree, wishes.Misfits);
                wishes.Move(rule, likeWeight, least, rounder.Limits.UpperMillilitres);
            }
        }
    }
}
