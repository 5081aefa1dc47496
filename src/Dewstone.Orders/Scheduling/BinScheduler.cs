namespace Dewstone.Orders.Scheduling;

/// <summary>
/// Schedules bins over printers, shifts, bins in circulation, curing places, crew and mix: fewest late units first, then the earliest finish. A list schedule
/// gives a valid plan at once; CP-SAT, begun with it, looks for a better one and for the bound, on one worker with a fixed seed, stopped by deterministic time.
/// </summary>
public static class BinScheduler
{
    /// <summary>Usual limit of the solver's work, its deterministic time: about as many seconds.</summary>
    public const double DefaultEffort = 4.0;

    /// <summary>Most bins that the solver is asked about; its model grows with the square of them. Above, the list schedule stands with simple bounds.</summary>
    public const int MostSolved = 250;

    /// <summary>Schedules.</summary>
    /// <param name="tasks">The bins, at least one.</param>
    /// <param name="rules">What the yard allows.</param>
    /// <param name="effort">Limit of the solver's deterministic time; 0 for the list schedule alone.</param>
    /// <returns>The schedule; incomplete when some bins can never be printed.</returns>
    public static BinSchedule Solve(IReadOnlyList<BinTask> tasks, YardRules rules, double effort = DefaultEffort)
    {
        ArgumentNullException.ThrowIfNull(tasks);
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentOutOfRangeException.ThrowIfZero(tasks.Count, nameof(tasks));
        BinSchedule best = Orders(tasks).Select(order => Of(tasks, ListScheduler.Run(tasks, rules, order))).Aggregate(Better);
        (int late, int finish) = SimpleBounds.Of(tasks, rules);
        best = best with { LateBound = late, FinishBound = best.LateUnits == 0 ? finish : Math.Min(finish, best.Finish) };
        if (effort <= 0.0 || tasks.Count > MostSolved || !best.Complete || (best.LateUnits == late && best.Finish == finish))
        {
            return best;
        }

        (TaskTimes[]? found, int lateBound, int finishBound) = ScheduleModel.Solve(tasks, rules, best, effort);
        if (found is not null && Lasts(tasks, rules, found))
        {
            // The solver leaves slack where it costs nothing; in the order of its begins the list schedule takes it out.
            BinSchedule solved = Of(tasks, [.. found.Select(times => (TaskTimes?)times)]);
            BinSchedule tight = Of(tasks, ListScheduler.Run(tasks, rules, Enumerable.Range(0, tasks.Count).OrderBy(task => found[task].Start).ThenBy(task => task)));
            best = Better(best, Better(tight, solved));
        }

        late = Math.Max(late, lateBound);
        return best with { LateBound = late, FinishBound = best.LateUnits == late ? Math.Max(best.LateUnits == 0 ? finish : 0, finishBound) : 0 };
    }

    private static IEnumerable<IEnumerable<int>> Orders(IReadOnlyList<BinTask> tasks)
    {
        int[] given = [.. Enumerable.Range(0, tasks.Count)];
        yield return given.OrderBy(task => tasks[task].Due);
        yield return given.OrderBy(task => tasks[task].Due).ThenByDescending(task => tasks[task].Minutes.Max());
        yield return given.OrderBy(task => tasks[task].Due).ThenByDescending(task => tasks[task].Set + tasks[task].Dig);
    }

    private static BinSchedule Of(IReadOnlyList<BinTask> tasks, TaskTimes?[] times) => new()
    {
        Times = times,
        LateUnits = times.Select((t, task) => t is { } at && at.DigEnd <= tasks[task].Due ? 0 : tasks[task].Units).Sum(),
        Finish = times.Max(t => t?.DigEnd ?? 0),
    };

    private static BinSchedule Better(BinSchedule first, BinSchedule second) =>
        (second.LateUnits, second.Complete ? 0 : 1, second.Finish).CompareTo((first.LateUnits, first.Complete ? 0 : 1, first.Finish)) < 0 ? second : first;

    // The solver counts on all of every delivery; here only on what fits.
    private static bool Lasts(IReadOnlyList<BinTask> tasks, YardRules rules, TaskTimes[] times) =>
        rules.Stock is not { } stock
        || stock.Follow(times.SelectMany((t, task) => new[] { (t.Start, -tasks[task].Spread), (t.DigEnd, tasks[task].Reused) })).Least >= 0;
}
