using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>The correction of doses at one place on the needle grid, taken further only when the place is worth it.</summary>
internal sealed class RegistrationRun
{
    private readonly CorrectionRule rule;
    private readonly CorrectionLevel level;
    private readonly DoseWishes wishes;
    private readonly DoseRounder rounder;
    private readonly ProximityCorrection correction;
    private readonly double[] around;
    private readonly double start;
    private readonly List<double> least = [];

    /// <summary>A run that has not begun.</summary>
    /// <param name="job">Unit, mix, printer and needles.</param>
    /// <param name="field">Wanted solid and weights over the place's coarse cells; stressed under blocked needles.</param>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="nominal">Dose of a full voxel.</param>
    /// <param name="rule">Objective and step.</param>
    /// <param name="learned">What to begin with; null for plain doses.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    public RegistrationRun(
        JobDescription job, CorrectionField field, Lattice lattice, NominalDose nominal, CorrectionRule rule, LearnedDoses? learned, Parallelism parallelism)
    {
        this.rule = rule;
        rounder = new DoseRounder(job, lattice);
        level = new CorrectionLevel(job, field, lattice, rounder, new ForwardModel(job, lattice, parallelism), nominal, rule, parallelism);
        start = Math.Min(rounder.Limits.UpperMillilitres, rule.StartShare * Math.Min(nominal.ClosingMillilitres, nominal.Millilitres));
        double[] millilitres = PlainDoseSearch.Wishes(level.Fractions, start);
        var isFree = new bool[millilitres.Length];
        for (int i = 0; i < isFree.Length; i++)
        {
            isFree[i] = millilitres[i] > 0.0 && !rounder.IsBlocked(i);
        }

        around = new double[isFree.Length];
        level.GatherWanted(isFree, around);
        for (int i = 0; learned is not null && i < isFree.Length; i++)
        {
            millilitres[i] = isFree[i] ? Math.Min(rounder.Limits.UpperMillilitres, millilitres[i] * learned.Factor(level.Fractions[i], around[i])) : millilitres[i];
        }

        wishes = new DoseWishes(millilitres, isFree, null);
        correction = new ProximityCorrection(rounder, wishes, rule, 0.0, new DoseHistory(1, null));
    }

    /// <summary>Solves so far.</summary>
    public int Solves => least.Count;

    /// <summary>Least objective after a number of solves, litres; those that are missing are done.</summary>
    /// <param name="solves">Solves, 1 or more.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>Litres.</returns>
    public double LeastAfter(int solves, CancellationToken cancellation)
    {
        while (least.Count < solves)
        {
            if (least.Count > 0)
            {
                level.Gather(wishes.IsFree, wishes.Misfits);
                wishes.Move(rule, 0.0, ProximityCorrection.LeastWishShare * rounder.Limits.LeastMillilitres, rounder.Limits.UpperMillilitres);
            }

            correction.Offer(level, wishes.Millilitres, DoseStepKind.Corrected, cancellation);
            least.Add(correction.Least);
        }

        return least[solves - 1];
    }

    /// <summary>What the best doses so far teach.</summary>
    /// <returns>The means of their classes.</returns>
    public LearnedDoses Learn() => new(level.Fractions, around, wishes.IsFree, correction.BestWishes, start);
}
