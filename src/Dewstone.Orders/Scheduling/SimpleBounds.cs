namespace Dewstone.Orders.Scheduling;

/// <summary>
/// Bounds that need no search: each bin alone in the yard; all printing spread evenly over the printers' shifts; all digging out in the crew's days; all time in bins and in curing
/// places spread evenly over them; and the delivery before which the mix cannot last for the last bin.
/// </summary>
internal static class SimpleBounds
{
    /// <summary>The bounds.</summary>
    /// <param name="tasks">The bins, at least one.</param>
    /// <param name="rules">What the yard allows.</param>
    /// <returns>No schedule has fewer late units, and none is finished before, minutes.</returns>
    public static (int Late, int Finish) Of(IReadOnlyList<BinTask> tasks, YardRules rules)
    {
        int late = 0, finish = 0, firstStart = int.MaxValue, firstEnd = int.MaxValue, firstDig = int.MaxValue, rest = int.MaxValue, shortest = int.MaxValue;
        long printing = 0, digging = 0, inBins = 0, curing = 0;
        foreach (BinTask task in tasks)
        {
            int minutes = task.Minutes.Min()!.Value;
            (printing, digging) = (printing + minutes + rules.Change, digging + task.Dig);
            (inBins, curing) = (inBins + minutes + task.Set + task.Dig, curing + task.Set + task.Dig);
            (rest, shortest) = (Math.Min(rest, task.Set + task.Dig - rules.Change), Math.Min(shortest, minutes + task.Set + task.Dig));
            if (ListScheduler.Run([task], rules with { Stock = null }, [0])[0] is not { } alone)
            {
                late += task.Units;
                continue;
            }

            late += alone.DigEnd <= task.Due ? 0 : task.Units;
            finish = Math.Max(finish, alone.DigEnd);
            (firstStart, firstEnd, firstDig) = (Math.Min(firstStart, alone.Start), Math.Min(firstEnd, alone.PrintEnd), Math.Min(firstDig, alone.DigStart));
        }

        if (firstStart == int.MaxValue)
        {
            return (late, 0);
        }

        finish = Math.Max(finish, Worked(rules.Shifts, 0, Over(printing, tasks[0].Minutes.Count)) + rest);
        finish = Math.Max(finish, rules.Crew is null ? 0 : Worked(rules.Crew, firstDig, digging));
        finish = Math.Max(finish, rules.Bins is { } bins and > 0 ? firstStart + (int)Over(inBins, bins) : 0);
        finish = Math.Max(finish, rules.CuringPlaces is { } places and > 0 ? firstEnd + (int)Over(curing, places) : 0);
        return (late, Math.Max(finish, LastSupply(tasks, rules) is { } supply && rules.Shifts.Earliest(supply, 0) is { } begin ? begin + shortest : 0));
    }

    // When a worker has worked so many minutes at the earliest.
    private static int Worked(WorkCalendar calendar, int from, long minutes)
    {
        foreach (TimeWindow window in calendar.Windows.Where(window => window.To > from))
        {
            int begin = Math.Max(from, window.From);
            if (minutes <= window.To - begin)
            {
                return begin + (int)minutes;
            }

            minutes -= window.To - begin;
        }

        return 0;
    }

    // What is on hand and delivered when the last bin begins, and what came back from all others, must last for all of them.
    private static int? LastSupply(IReadOnlyList<BinTask> tasks, YardRules rules)
    {
        if (rules.Stock is not { } stock)
        {
            return null;
        }

        long needed = tasks.Sum(task => (long)task.Spread - task.Reused) + tasks.Min(task => task.Reused) - stock.OnHand;
        int at = 0;
        foreach (StockDelivery delivery in stock.Deliveries)
        {
            if (needed <= 0)
            {
                return at;
            }

            (at, needed) = (delivery.At, needed - delivery.Kilograms);
        }

        return needed <= 0 ? at : null;
    }

    private static long Over(long sum, int among) => (sum + among - 1) / among;
}
