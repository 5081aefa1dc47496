using Google.OrTools.Sat;

namespace Dewstone.Orders.Packing;

/// <summary>Chooses how many bins of each pattern give all units that are wanted (cutting stock over patterns), with CP-SAT on one worker and a fixed seed.</summary>
public static class BinChooser
{
    private const double Effort = 10.0;

    /// <summary>Chooses.</summary>
    /// <param name="offers">Patterns by printer.</param>
    /// <param name="wanted">Units wanted, by line.</param>
    /// <param name="goal">What to be best in.</param>
    /// <returns>The choice; null when no offers give what is wanted. It may give more than is wanted.</returns>
    public static BinChoice? Choose(IReadOnlyList<BinOffer> offers, IReadOnlyList<int> wanted, BinGoal goal)
    {
        ArgumentNullException.ThrowIfNull(offers);
        ArgumentNullException.ThrowIfNull(wanted);
        if (wanted.Where((count, line) => count > 0 && !offers.Any(offer => offer.Counts[line] > 0)).Any())
        {
            return null;
        }

        CpModel model = new();
        IntVar[] times = [.. offers.Select(offer => model.NewIntVar(0, wanted.Where((_, line) => offer.Counts[line] > 0).DefaultIfEmpty(0).Max(), ""))];
        for (int line = 0; line < wanted.Count; line++)
        {
            int[] gives = [.. offers.Select(offer => offer.Counts[line])];
            model.Add(LinearExpr.WeightedSum(times, gives) >= wanted[line]);
        }

        long most = offers.Max(offer => (long)offer.Minutes) * wanted.Sum(count => (long)count) + 1;
        int[] minutes = [.. offers.Select(offer => offer.Minutes)];
        LinearExpr bins = LinearExpr.Sum(times);
        long weight;
        if (goal == BinGoal.FewestBins)
        {
            weight = most;
            model.Minimize(bins * weight + LinearExpr.WeightedSum(times, minutes));
        }
        else
        {
            weight = wanted.Sum(count => (long)count) + 1;
            IntVar busiest = model.NewIntVar(0, most, "");
            foreach (int printer in offers.Select(offer => offer.Printer).Distinct())
            {
                model.Add(LinearExpr.WeightedSum(times, minutes.Select((m, o) => offers[o].Printer == printer ? m : 0).ToArray()) <= busiest);
            }

            model.Minimize(busiest * weight + bins);
        }

        using CpSolver solver = new() { StringParameters = FormattableString.Invariant($"num_workers:1,random_seed:1,max_deterministic_time:{Effort}") };
        CpSolverStatus status = solver.Solve(model);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
        {
            throw new InvalidOperationException($"Choosing bins ended with {status}: {model.Validate()}");
        }

        long bound = (long)Math.Ceiling(Math.Max(0.0, solver.BestObjectiveBound - 0.5)) / weight;
        return new BinChoice([.. times.Select(time => (int)solver.Value(time))], bound, status == CpSolverStatus.Optimal);
    }
}
