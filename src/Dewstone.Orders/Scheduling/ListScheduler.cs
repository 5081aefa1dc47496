namespace Dewstone.Orders.Scheduling;

/// <summary>
/// Places bins one after the other, each as early as all rules allow after those before it: quick, always valid, not always the best. Of the bins that wait, the
/// next is the first in the given order for the printer that can begin earliest.
/// </summary>
internal sealed class ListScheduler
{
    private readonly IReadOnlyList<BinTask> tasks;
    private readonly YardRules rules;
    private readonly int[] printerFree;
    private readonly List<int> digEnds = [];
    private readonly List<(int At, int Kilograms)> moves = [];
    private readonly TaskTimes?[] times;
    private int now, crewFree;

    private ListScheduler(IReadOnlyList<BinTask> tasks, YardRules rules)
    {
        (this.tasks, this.rules) = (tasks, rules);
        printerFree = new int[tasks.Count == 0 ? 0 : tasks[0].Minutes.Count];
        times = new TaskTimes?[tasks.Count];
    }

    /// <summary>Schedules.</summary>
    /// <param name="tasks">The bins.</param>
    /// <param name="rules">What the yard allows.</param>
    /// <param name="order">The order in which they wait.</param>
    /// <returns>Times by bin; null for those that never can be printed.</returns>
    public static TaskTimes?[] Run(IReadOnlyList<BinTask> tasks, YardRules rules, IEnumerable<int> order)
    {
        ListScheduler run = new(tasks, rules);
        LinkedList<int> waiting = new(order);
        while (waiting.First is not null && run.PlaceNext(waiting))
        {
            // Until none waits or none can be placed.
        }

        return run.times;
    }

    private bool PlaceNext(LinkedList<int> waiting)
    {
        (LinkedListNode<int> Node, TaskTimes Times)? best = null;
        for (int printer = 0; printer < printerFree.Length; printer++)
        {
            // Bins alike behind the first that can be printed here begin no earlier.
            LinkedListNode<int>? node = waiting.First;
            while (node is not null && tasks[node.Value].Minutes[printer] is null)
            {
                node = node.Next;
            }

            if (node is not null && Earliest(tasks[node.Value], printer) is { } found
                && (best is not { } b || found.Start < b.Times.Start || (found.Start == b.Times.Start && found.PrintEnd < b.Times.PrintEnd)))
            {
                best = (node, found);
            }
        }

        if (best is not { } place)
        {
            return false;
        }

        BinTask task = tasks[place.Node.Value];
        times[place.Node.Value] = place.Times;
        now = place.Times.Start;
        printerFree[place.Times.Printer] = place.Times.PrintEnd + rules.Change;
        crewFree = rules.Crew is null ? 0 : place.Times.DigEnd;
        digEnds.Insert(OutUntil(place.Times.DigEnd), place.Times.DigEnd);
        moves.Add((place.Times.Start, -task.Spread));
        moves.Add((place.Times.DigEnd, task.Reused));
        waiting.Remove(place.Node);
        return true;
    }

    // Begins never go back in time, so that what is free at the begin stays free.
    private TaskTimes? Earliest(BinTask task, int printer)
    {
        int minutes = task.Minutes[printer]!.Value;
        int from = Math.Max(now, printerFree[printer]);
        while (rules.Shifts.Earliest(from, minutes + rules.Change) is { } start)
        {
            int end = start + minutes;
            if (StillOut(start, rules.Bins) is { } bin)
            {
                from = Math.Max(start + 1, bin);
            }
            else if (StillOut(end, rules.CuringPlaces) is { } place)
            {
                from = Math.Max(start + 1, place - minutes);
            }
            else if (rules.Stock is { } stock && !Lasts(stock, start, task.Spread))
            {
                if (NextSupply(stock, start) is not { } supply)
                {
                    return null;
                }

                from = supply;
            }
            else
            {
                int ready = Math.Max(end + task.Set, crewFree);
                int? dig = rules.Crew is null ? end + task.Set : rules.Crew.Earliest(ready, task.Dig);
                return dig is { } begin ? new TaskTimes(printer, start, end, begin, begin + task.Dig) : null;
            }
        }

        return null;
    }

    // When one more bin can be out, if none can at a time.
    private int? StillOut(int at, int? most)
    {
        if (most is not { } count)
        {
            return null;
        }

        int index = OutUntil(at);
        int tooMany = digEnds.Count - index - count;
        return tooMany < 0 ? null : count == 0 ? int.MaxValue : digEnds[index + tooMany];
    }

    // Bins dug out at a time or before.
    private int OutUntil(int at)
    {
        int index = digEnds.BinarySearch(at);
        index = index < 0 ? ~index : index;
        while (index < digEnds.Count && digEnds[index] <= at)
        {
            index++;
        }

        return index;
    }

    // Later deliveries and returns only raise the level, and begins never go back in time.
    private bool Lasts(SiloStock stock, int start, int spread) =>
        stock.Follow(moves.Where(move => move.At <= start).Append((start, -spread))).Least >= 0;

    private int? NextSupply(SiloStock stock, int after)
    {
        int[] supplies = [.. stock.Deliveries.Select(d => d.At).Concat(moves.Where(m => m.Kilograms > 0).Select(m => m.At)).Where(at => at > after)];
        return supplies.Length == 0 ? null : supplies.Min();
    }
}
