using Dewstone.Model.Diagnostics;
using Dewstone.Orders.Listing;
using Dewstone.Orders.Plans;
using Dewstone.Reading;

namespace Dewstone.Orders.Batches;

/// <summary>Holds a plan against the order it is of: each unit once, on a printer that can make it.</summary>
public static class PlanFit
{
    /// <summary>Checks.</summary>
    /// <param name="reading">The order.</param>
    /// <param name="plan">The plan.</param>
    /// <returns>DW7036, or null when it fits.</returns>
    public static Diagnostic? Check(OrderReading reading, OrderPlan plan)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(plan);
        Dictionary<string, OrderedUnit> due = OrderListing.Of(reading.Order!).ToDictionary(unit => unit.Mark, StringComparer.Ordinal);
        HashSet<(int Line, int Printer)> footings = [];
        if (plan.Footings.FirstOrDefault(footing => !footings.Add((footing.Line, footing.Printer))) is { } twice)
        {
            return Unfit($"line {twice.Line + 1} has two standings on printer {twice.Printer + 1} of the order");
        }

        HashSet<string> bins = new(StringComparer.Ordinal);
        foreach (PlannedBin bin in plan.Bins)
        {
            if (!bins.Add(bin.Name) || bin.Units.Count == 0 || bin.Name.Length == 0 || bin.Name != Path.GetFileName(bin.Name) || bin.Name.StartsWith('.'))
            {
                return Unfit($"the bin `{bin.Name}` is empty, stands twice, or has no name for a folder");
            }

            foreach (PlannedUnit planned in bin.Units)
            {
                if (!due.Remove(planned.Mark, out OrderedUnit? unit))
                {
                    return Unfit($"{planned.Mark} in {bin.Name} is not ordered, or stands twice");
                }

                if (!footings.Contains((unit.Line, bin.Printer)) || bin.Printer < 0 || bin.Printer >= reading.Jobs[unit.Line].Count || reading.Jobs[unit.Line][bin.Printer]?.Job is null)
                {
                    return Unfit($"{planned.Mark} in {bin.Name} cannot be made on printer {bin.Printer + 1} of the order");
                }
            }
        }

        return due.Count == 0 ? null : Unfit($"{due.Count} units stand in no bin, {due.Keys.First()} among them");
    }

    private static Diagnostic Unfit(string message) => BatchFindings.PlanDoesNotFit.At(message, "remove plan.json and plan the order again");
}
