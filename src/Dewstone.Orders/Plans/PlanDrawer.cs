using System.Globalization;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Orders.Listing;
using Dewstone.Orders.Packing;
using Dewstone.Orders.Scheduling;
using Dewstone.Reading;

namespace Dewstone.Orders.Plans;

/// <summary>Makes the plan of a schedule: bins named in order of printing, units marked in the order in which they are printed.</summary>
internal static class PlanDrawer
{
    /// <summary>Draws up the plan.</summary>
    /// <param name="reading">The order.</param>
    /// <param name="calendar">Its days.</param>
    /// <param name="draft">Bins and schedule; complete.</param>
    /// <param name="lines">Lines on printers.</param>
    /// <param name="findings">All findings.</param>
    /// <returns>The plan with its figures.</returns>
    public static PlanningResult Draw(OrderReading reading, YardCalendar calendar, PlanDraft draft, IReadOnlyList<LineOnPrinter> lines, IReadOnlyList<Diagnostic> findings)
    {
        int[] inOrder = [.. Enumerable.Range(0, draft.Bins.Count).OrderBy(bin => Times(draft, bin).Start).ThenBy(bin => draft.Bins[bin].Printer).ThenBy(bin => bin)];
        Queue<string>[] marks = [.. reading.Order!.Units.Select(_ => new Queue<string>())];
        foreach (OrderedUnit unit in OrderListing.Of(reading.Order))
        {
            marks[unit.Line].Enqueue(unit.Mark);
        }

        string[] stems = Stems(reading.PrinterPaths);
        int[] printed = new int[stems.Length];
        List<PlannedBin> bins = [];
        foreach (int index in inOrder)
        {
            BinContent content = draft.Bins[index];
            TaskTimes times = Times(draft, index);
            bins.Add(new PlannedBin
            {
                Name = $"{stems[content.Printer]}-{(++printed[content.Printer]).ToString("000", CultureInfo.InvariantCulture)}",
                Printer = content.Printer,
                ShiftedLayers = content.ShiftedLayers,
                ShiftZ = new Length(content.ShiftZMetres),
                Units = [.. content.Spots.Select(spot => new PlannedUnit(marks[spot.Line].Dequeue(), spot.QuarterTurns, spot.Column, spot.Row))
                    .OrderBy(unit => unit.Mark, StringComparer.Ordinal)],
                Start = calendar.Time(times.Start),
                PrintEnd = calendar.Time(times.PrintEnd),
                DigNotBefore = calendar.Time(times.PrintEnd + draft.Tasks[index].Set),
                DigStart = calendar.Time(times.DigStart),
                DigEnd = calendar.Time(times.DigEnd),
                Mix = new Mass(SignificantFigures.Six(content.SpreadKilograms)),
            });
        }

        HashSet<(int, int)> used = [.. draft.Bins.SelectMany(bin => bin.Spots.Select(spot => (spot.Line, bin.Printer)))];
        OrderPlan plan = new()
        {
            Order = reading.Order.Name,
            OrderHash = reading.Hash,
            Footings = [.. lines.Select(line => line.Footing).Where(footing => used.Contains((footing.Line, footing.Printer)))],
            Bins = bins,
        };
        return new PlanningResult
        {
            Plan = plan,
            Contents = [.. inOrder.Select(index => draft.Bins[index])],
            Lines = lines,
            Figures = Figures(reading, calendar, draft, lines),
            Findings = findings,
        };
    }

    private static PlanFigures Figures(OrderReading reading, YardCalendar calendar, PlanDraft draft, IReadOnlyList<LineOnPrinter> lines) => new()
    {
        Units = reading.Order!.Units.Sum(line => line.Quantity),
        LateUnits = draft.Schedule.LateUnits,
        LateBound = draft.Schedule.LateBound,
        Finish = calendar.Time(draft.Schedule.Finish),
        FinishBound = calendar.Time(draft.Schedule.FinishBound),
        Optimal = draft.Schedule.Optimal,
        BinsChosenFor = draft.Goal == BinGoal.FewestBins ? "fewest bins" : "least time of the busiest printer",
        BinsProved = draft.BinsProved,
        FullPaceKilograms = draft.Bins.GroupBy(bin => bin.Printer).Sum(group =>
            group.Sum(bin => bin.UnitKilograms) / group.Sum(bin => (double)bin.Minutes + draft.Rules.Change) * YardCalendar.Day),
        BusiestDayKilograms = Busiest(draft),
        UsedUpKilograms = draft.Bins.Sum(bin => bin.SpreadKilograms - bin.ReusedKilograms),
        LongestSet = TimeSpan.FromMinutes(draft.Tasks.Max(task => task.Set)),
        Tasks = Advice(draft, lines),
    };

    private static TaskAdvice Advice(PlanDraft draft, IReadOnlyList<LineOnPrinter> lines)
    {
        long Alone(BinContent bin, UnitSpot spot) => lines.First(line => line.Footing.Line == spot.Line && line.Footing.Printer == bin.Printer).Doses.Lattice.Count;
        return TaskAdvice.Of(
            [.. draft.Bins.Select(bin => bin.Spots.Sum(spot => Alone(bin, spot)) + bin.Positions)],
            draft.Bins.Max(bin => Math.Max(bin.Positions, bin.Spots.Sum(spot => Alone(bin, spot)))));
    }

    // Mass printed in the 24 hours after some print begins; a print counts with its end.
    private static double Busiest(PlanDraft draft)
    {
        double most = 0.0;
        for (int first = 0; first < draft.Bins.Count; first++)
        {
            int from = Times(draft, first).Start;
            most = Math.Max(most, Enumerable.Range(0, draft.Bins.Count)
                .Where(bin => Times(draft, bin).Start >= from && Times(draft, bin).PrintEnd <= from + YardCalendar.Day).Sum(bin => draft.Bins[bin].UnitKilograms));
        }

        return most;
    }

    private static TaskTimes Times(PlanDraft draft, int bin) => draft.Schedule.Times[bin]!.Value;

    // Names of the printers' files; where two are alike, with their number in the order's list.
    private static string[] Stems(IReadOnlyList<string> paths)
    {
        string[] stems = [.. paths.Select(path => Path.GetFileName(path) is var name && name.IndexOf('.', 1) is > 0 and var dot ? name[..dot] : name)];
        return [.. stems.Select((stem, index) => stems.Count(other => other == stem) > 1 ? $"{stem}{index + 1}" : stem)];
    }
}
