using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Orders.Scheduling;

namespace Dewstone.Orders.Plans;

/// <summary>
/// Says which constraints keep an order from being done by its due date: each whose leaving out alone is enough; else a smallest set, from which none can be
/// put back. A constraint is only named when a plan without it was found.
/// </summary>
internal sealed class BindingSearch(Order order, BinTask[] tasks, YardRules rules, IReadOnlyList<BinContent> bins)
{
    private const double Effort = 2.0;

    private readonly IReadOnlyList<YardConstraint> constraints = YardConstraint.Of(order, bins);

    /// <summary>Searches.</summary>
    /// <returns>DW7006 for each that is enough alone; else DW7007.</returns>
    public IReadOnlyList<Diagnostic> Find()
    {
        YardConstraint[] single = [.. constraints.Where(constraint => IsDone([constraint]))];
        if (single.Length > 0)
        {
            return [.. single.Select(constraint => OrderFindings.Binds.At(
                $"{constraint.Words}: without this limit, all else kept, everything is done by the due date", "relax it as far as it takes", Key(constraint.Key)))];
        }

        List<YardConstraint> leftOut = [.. constraints];
        if (leftOut.Count == 0 || !IsDone(leftOut))
        {
            return [OrderFindings.BindTogether.At(
                leftOut.Count == 0 ? "the printers alone do not print it by the due date" : "even with every other limit left out the printers do not print it by the due date",
                "add a printer, or agree on a later date", Key("due"))];
        }

        foreach (YardConstraint constraint in constraints)
        {
            List<YardConstraint> fewer = [.. leftOut.Where(other => other != constraint)];
            leftOut = IsDone(fewer) ? fewer : leftOut;
        }

        return [.. leftOut.Select(constraint => OrderFindings.BindTogether.At(
            $"{constraint.Words}: one of {leftOut.Count} limits that must be relaxed together ({string.Join(", ", leftOut.Select(other => $"`{other.Key}`"))})",
            "relax all of them, or agree on a later date", Key(constraint.Key)))];
    }

    private bool IsDone(IReadOnlyList<YardConstraint> leftOut)
    {
        (BinTask[] Tasks, YardRules Rules) relaxed = leftOut.Aggregate((tasks, rules), (now, constraint) => constraint.LeaveOut(now.Item1, now.Item2));
        return BinScheduler.Solve(relaxed.Tasks, relaxed.Rules, 0.0).LateUnits == 0 || BinScheduler.Solve(relaxed.Tasks, relaxed.Rules, Effort).LateUnits == 0;
    }

    private static KeyPath Key(string key) => new(DescriptionKind.Order, key);
}
