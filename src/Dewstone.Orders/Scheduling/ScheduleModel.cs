using Google.OrTools.Sat;
using Google.OrTools.Util;

namespace Dewstone.Orders.Scheduling;

/// <summary>The schedule as a model of CP-SAT. Of the silo's capacity it knows nothing: it counts on all of every delivery, so that its bounds hold all the same.</summary>
internal sealed class ScheduleModel
{
    private readonly CpModel model = new();
    private readonly IReadOnlyList<BinTask> tasks;
    private readonly YardRules rules;
    private readonly BinSchedule known;
    private readonly int horizon;
    private readonly IntVar[] start, printEnd, digStart;
    private readonly BoolVar[]?[] on;
    private readonly List<IntervalVar>[] byPrinter;

    private ScheduleModel(IReadOnlyList<BinTask> tasks, YardRules rules, BinSchedule known)
    {
        (this.tasks, this.rules, this.known) = (tasks, rules, known);
        // No better schedule without late units ends later; with late units, fewer may be late in one that takes longer.
        horizon = known.LateUnits == 0 ? known.Finish : known.Finish + Math.Min(known.Finish, 60 * 24 * 60);
        start = new IntVar[tasks.Count];
        printEnd = new IntVar[tasks.Count];
        digStart = new IntVar[tasks.Count];
        on = new BoolVar[]?[tasks.Count];
        byPrinter = [.. tasks[0].Minutes.Select(_ => new List<IntervalVar>())];
    }

    /// <summary>Solves.</summary>
    /// <param name="tasks">The bins.</param>
    /// <param name="rules">What the yard allows.</param>
    /// <param name="known">A complete schedule to begin with.</param>
    /// <param name="effort">Limit of deterministic time.</param>
    /// <returns>The best schedule found, null when none; no schedule has fewer late units than the bound, and with as few none is finished before the other.</returns>
    public static (TaskTimes[]? Times, int LateBound, int FinishBound) Solve(IReadOnlyList<BinTask> tasks, YardRules rules, BinSchedule known, double effort) =>
        new ScheduleModel(tasks, rules, known).Solve(effort);

    private (TaskTimes[]? Times, int LateBound, int FinishBound) Solve(double effort)
    {
        for (int task = 0; task < tasks.Count; task++)
        {
            AddTask(task);
        }

        foreach (List<IntervalVar> printer in byPrinter)
        {
            model.AddNoOverlap(printer);
        }

        AddYard();
        AddStock();
        TakeAlikeInOrder();
        long weight = horizon + 1L;
        model.Minimize(Late() * weight + Finish());
        using CpSolver solver = new() { StringParameters = FormattableString.Invariant($"num_workers:1,random_seed:1,max_deterministic_time:{effort}") };
        CpSolverStatus status = solver.Solve(model);
        if (status is CpSolverStatus.ModelInvalid or CpSolverStatus.Infeasible)
        {
            throw new InvalidOperationException($"A model that holds a known schedule ended with {status}: {model.Validate()}");
        }

        long bound = Math.Max(0, (long)Math.Ceiling(solver.BestObjectiveBound - 0.5));
        TaskTimes[]? times = status == CpSolverStatus.Unknown ? null : [.. Enumerable.Range(0, tasks.Count).Select(task => new TaskTimes(
            Printer(task, solver), (int)solver.Value(start[task]), (int)solver.Value(printEnd[task]),
            (int)solver.Value(digStart[task]), (int)solver.Value(digStart[task]) + tasks[task].Dig))];
        return (times, (int)(bound / weight), (int)(bound % weight));
    }

    private void AddTask(int task)
    {
        BinTask bin = tasks[task];
        TaskTimes hint = known.Times[task]!.Value;
        int[] printers = [.. Enumerable.Range(0, bin.Minutes.Count).Where(printer => bin.Minutes[printer] is not null)];
        printEnd[task] = model.NewIntVar(0, horizon, "");
        if (printers.Length == 1)
        {
            int minutes = bin.Minutes[printers[0]]!.Value;
            start[task] = model.NewIntVarFromDomain(Begins(rules.Shifts, minutes + rules.Change), "");
            model.Add(printEnd[task] == start[task] + minutes);
            byPrinter[printers[0]].Add(model.NewFixedSizeIntervalVar(start[task], minutes + rules.Change, ""));
        }
        else
        {
            start[task] = model.NewIntVar(0, horizon, "");
            on[task] = [.. bin.Minutes.Select(_ => model.NewBoolVar(""))];
            model.AddExactlyOne(printers.Select(printer => on[task]![printer]));
            for (int printer = 0; printer < bin.Minutes.Count; printer++)
            {
                BoolVar here = on[task]![printer];
                model.AddHint(here, hint.Printer == printer);
                if (bin.Minutes[printer] is not { } minutes)
                {
                    model.Add(here == 0);
                    continue;
                }

                model.AddLinearExpressionInDomain(start[task], Begins(rules.Shifts, minutes + rules.Change)).OnlyEnforceIf(here);
                model.Add(printEnd[task] == start[task] + minutes).OnlyEnforceIf(here);
                byPrinter[printer].Add(model.NewOptionalFixedSizeIntervalVar(start[task], minutes + rules.Change, here, ""));
            }
        }

        model.AddHint(start[task], hint.Start);
        model.AddHint(printEnd[task], hint.PrintEnd);
        digStart[task] = rules.Crew is null ? model.NewIntVar(0, horizon, "") : model.NewIntVarFromDomain(Begins(rules.Crew, bin.Dig), "");
        model.AddHint(digStart[task], hint.DigStart);
        model.Add(digStart[task] >= printEnd[task] + bin.Set);
        model.Add(digStart[task] <= horizon - bin.Dig);
    }

    private Domain Begins(WorkCalendar calendar, int minutes) => Domain.FromFlatIntervals(calendar.Begins(minutes, horizon + rules.Change));

    private void AddYard()
    {
        if (rules.Crew is not null)
        {
            model.AddNoOverlap(Enumerable.Range(0, tasks.Count).Select(task => model.NewFixedSizeIntervalVar(digStart[task], tasks[task].Dig, "")));
        }

        AddPlaces(rules.Bins, start);
        AddPlaces(rules.CuringPlaces, printEnd);
    }

    private void AddPlaces(int? places, IntVar[] from)
    {
        if (places is not { } count || count >= tasks.Count)
        {
            return;
        }

        CumulativeConstraint taken = model.AddCumulative(count);
        for (int task = 0; task < tasks.Count; task++)
        {
            IntVar size = model.NewIntVar(0, horizon, "");
            taken.AddDemand(model.NewIntervalVar(from[task], size, digStart[task] + tasks[task].Dig, ""), 1);
        }
    }

    private void AddStock()
    {
        if (rules.Stock is not { } stock || tasks.Sum(task => (long)task.Spread) <= stock.OnHand)
        {
            return;
        }

        ReservoirConstraint silo = model.AddReservoirConstraint(0, int.MaxValue);
        silo.AddEvent(0, stock.OnHand);
        foreach (StockDelivery delivery in stock.Deliveries.Where(d => d.At <= horizon))
        {
            silo.AddEvent(delivery.At, delivery.Kilograms);
        }

        for (int task = 0; task < tasks.Count; task++)
        {
            silo.AddEvent(start[task], -tasks[task].Spread);
            silo.AddEvent(digStart[task] + tasks[task].Dig, tasks[task].Reused);
        }
    }

    private void TakeAlikeInOrder()
    {
        foreach (IGrouping<string, int> alike in Enumerable.Range(0, tasks.Count).GroupBy(task => (tasks[task] with { Minutes = [] }).ToString() + string.Join(',', tasks[task].Minutes)))
        {
            // In the order of the known schedule, which the hint is.
            int[] inOrder = [.. alike.OrderBy(task => known.Times[task]!.Value.Start).ThenBy(task => known.Times[task]!.Value.DigStart).ThenBy(task => task)];
            for (int index = 1; index < inOrder.Length; index++)
            {
                model.Add(start[inOrder[index - 1]] <= start[inOrder[index]]);
                if (rules.Crew is not null && tasks[inOrder[0]].Minutes.Count(m => m is not null) == 1)
                {
                    model.Add(digStart[inOrder[index - 1]] <= digStart[inOrder[index]]);
                }
            }
        }
    }

    private LinearExprBuilder Late()
    {
        LinearExprBuilder late = LinearExpr.NewBuilder();
        for (int task = 0; task < tasks.Count; task++)
        {
            if (tasks[task].Due >= horizon)
            {
                continue;
            }

            BoolVar isLate = model.NewBoolVar("");
            model.Add(digStart[task] <= tasks[task].Due - tasks[task].Dig).OnlyEnforceIf(isLate.Not());
            model.AddHint(isLate, known.Times[task]!.Value.DigEnd > tasks[task].Due);
            late.AddTerm(isLate, tasks[task].Units);
        }

        return late;
    }

    private IntVar Finish()
    {
        IntVar finish = model.NewIntVar(0, horizon, "");
        model.AddHint(finish, known.Finish);
        for (int task = 0; task < tasks.Count; task++)
        {
            model.Add(finish >= digStart[task] + tasks[task].Dig);
        }

        return finish;
    }

    private int Printer(int task, CpSolver solver) =>
        on[task] is { } choices ? Array.FindIndex(choices, choice => solver.BooleanValue(choice)) : Enumerable.Range(0, tasks[task].Minutes.Count).First(printer => tasks[task].Minutes[printer] is not null);
}
