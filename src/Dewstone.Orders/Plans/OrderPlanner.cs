using System.Globalization;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Orders.Listing;
using Dewstone.Orders.Packing;
using Dewstone.Orders.Scheduling;
using Dewstone.Reading;

namespace Dewstone.Orders.Plans;

/// <summary>Plans an order: which units in which bin, on which printer and when; the same plan on every run.</summary>
public sealed class OrderPlanner
{
    private readonly OrderReading reading;
    private readonly Order order;
    private readonly DiagnosticBag findings = new();
    private readonly YardCalendar calendar;

    private readonly double effort;

    private OrderPlanner(OrderReading reading, double effort)
    {
        (this.reading, order, this.effort) = (reading, reading.Order!, effort);
        calendar = new YardCalendar(order);
        findings.AddRange(reading.Diagnostics);
    }

    /// <summary>Plans.</summary>
    /// <param name="reading">The order as read, with all it names.</param>
    /// <param name="parallelism">Threads for standing units on printers; the search itself uses one.</param>
    /// <param name="progress">Told in between; may be null.</param>
    /// <param name="cancellation">Looked at in between.</param>
    /// <param name="effort">Limit of the schedule solver's deterministic time; 0 for the list schedule alone.</param>
    /// <returns>The plan, or what stands against it.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static PlanningResult Plan(
        OrderReading reading, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation, double effort = BinScheduler.DefaultEffort)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return reading.Order is null || reading.Diagnostics.Any(finding => finding.Severity == Severity.Error)
            ? new PlanningResult { Findings = reading.Diagnostics, InputAtFault = true }
            : new OrderPlanner(reading, effort).Plan(parallelism, progress, cancellation);
    }

    private PlanningResult Plan(Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        if (StudyLines(parallelism, progress, cancellation) is not { } lines)
        {
            return Refused(inputAtFault: true);
        }

        progress?.Report(new Progress("packing", 0.5));
        BinFiller filler = new(order, lines);
        for (int line = 0; line < order.Units.Count; line++)
        {
            if (!filler.Holds(line))
            {
                findings.Add(OrderFindings.NoBin.At(
                    $"a bin with one `{order.Units[line].File}` in it is heavier than the {order.Bins?.Handling.Kilograms ?? 0:0} kg that may be handled, or cannot be dug out in a day",
                    "raise `bins.handling`, or take a smaller bin", new KeyPath(DescriptionKind.Order, $"units[{line}].file")));
            }
        }

        if (findings.HasErrors)
        {
            return Refused();
        }

        // By the quick schedules of both ways to choose bins: fewest bins unless the other is done earlier. The solver then works on the better.
        PlanDraft fewest = Schedule(filler, BinGoal.FewestBins), busy = Schedule(filler, BinGoal.LeastBusyPrinter);
        PlanDraft best = (busy.Schedule.LateUnits, busy.Schedule.Finish).CompareTo((fewest.Schedule.LateUnits, fewest.Schedule.Finish)) < 0 ? busy : fewest;
        CheckShifts(best);
        if (findings.HasErrors)
        {
            return Refused();
        }

        progress?.Report(new Progress("scheduling", 0.6, $"{best.Bins.Count} bins"));
        return Judge(best with { Schedule = BinScheduler.Solve(best.Tasks, best.Rules, effort) }, lines, progress, cancellation);
    }

    private PlanningResult Refused(bool inputAtFault = false) => new() { Findings = [.. findings.Items.Select(reading.Place)], InputAtFault = inputAtFault };

    // Every line on every printer; null when a design is at fault.
    private List<LineOnPrinter>? StudyLines(Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        List<LineOnPrinter> lines = [];
        int all = reading.Jobs.Sum(line => line.Count(job => job is not null)), done = 0;
        for (int line = 0; line < order.Units.Count; line++)
        {
            List<string> obstacles = [];
            for (int printer = 0; printer < reading.PrinterPaths.Count; printer++)
            {
                if (reading.Jobs[line][printer] is not { } read)
                {
                    continue;
                }

                cancellation.ThrowIfCancellationRequested();
                progress?.Report(new Progress("standing units on printers", 0.5 * done++ / all, $"{order.Units[line].Mark} on {read.Job!.Printer.Name}"));
                LineStudy study = LineStudy.Of(read, line, printer, parallelism, cancellation);
                findings.AddRange(study.Findings.Where(finding => !findings.Items.Contains(finding)));
                if (study.Line is { } found)
                {
                    lines.Add(found);
                }

                if (study.Obstacle.Length > 0)
                {
                    obstacles.Add($"{read.Job!.Printer.Name}: {study.Obstacle}");
                }
            }

            if (obstacles.Count > 0 && !lines.Exists(found => found.Footing.Line == line))
            {
                findings.Add(OrderFindings.NoBin.At(
                    $"`{order.Units[line].File}` stands in no bin: {string.Join("; ", obstacles)}", "add a printer with a larger bin, or draw it smaller",
                    new KeyPath(DescriptionKind.Order, $"units[{line}].file")));
            }
        }

        CheckAges(lines);
        CheckCrew();
        if (order.MixStock is not null && lines.DistinctBy(line => line.MixHash).Count() > 1)
        {
            findings.Add(OrderFindings.OneStock.At(
                $"the units are made of {lines.DistinctBy(line => line.MixHash).Count()} mixes, and one stock is told of", "name one mix for the order with `mix:`",
                new KeyPath(DescriptionKind.Order, "mix_stock")));
        }

        return findings.HasErrors ? null : lines;
    }

    private void CheckAges(List<LineOnPrinter> lines)
    {
        foreach (LineOnPrinter line in lines.Where(line => line.Ages.LiftDays is null).DistinctBy(line => line.Footing.Line))
        {
            findings.Add(OrderFindings.NeverDug.At(
                $"`{order.Units[line.Footing.Line].File}` of {line.Job.Mix.Name} reaches {line.Ages.MeanPascals * 1e-6:0.#} MPa in 28 days at 20 degC and never what units are lifted at",
                "raise the binder share or the loose density of the mix, or give measured cubes", new KeyPath(DescriptionKind.Order, $"units[{line.Footing.Line}].file")));
        }
    }

    private void CheckCrew()
    {
        if (order.Crew is { } crew && crew.DigOut > crew.Hours)
        {
            findings.Add(OrderFindings.CrewTooShort.At(
                $"digging out one unit takes {crew.DigOut.Minutes:0.#} min, the crew's day has {crew.Hours.Minutes:0.#} min", "correct `dig_out` or `hours`",
                new KeyPath(DescriptionKind.Order, "crew.dig_out")));
        }
    }

    private PlanDraft Schedule(BinFiller filler, BinGoal goal)
    {
        (IReadOnlyList<BinContent> bins, bool proved) = filler.Choose(goal);
        BinTask[] tasks = OrderTasks.Tasks(order, calendar, bins, reading.PrinterPaths.Count);
        YardRules rules = OrderTasks.Rules(order, calendar);
        return new PlanDraft(goal, proved, bins, tasks, rules, BinScheduler.Solve(tasks, rules, 0.0));
    }

    private void CheckShifts(PlanDraft draft)
    {
        int longest = draft.Tasks.Max(task => task.Minutes.Max()!.Value) + draft.Rules.Change;
        if (longest > draft.Rules.Shifts.Longest)
        {
            findings.Add(OrderFindings.ShiftTooShort.At(
                $"setting up, printing and changing one bin take up to {longest} min; the longest shift has {draft.Rules.Shifts.Longest} min", "lengthen the shift, or plan around the clock",
                new KeyPath(DescriptionKind.Order, "shifts")));
        }
    }

    private PlanningResult Judge(PlanDraft draft, IReadOnlyList<LineOnPrinter> lines, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        BinSchedule schedule = draft.Schedule;
        if (schedule.LateUnits > 0)
        {
            progress?.Report(new Progress("looking for the limits that bind", 0.9));
            double missing = MissingMix(draft);
            if (missing > 0.0)
            {
                findings.Add(OrderFindings.MixShort.At(
                    $"the order uses up {draft.Tasks.Sum(task => (double)task.Spread - task.Reused) / 1000.0:0.#} t of mix, {missing / 1000.0:0.#} t more than is on hand and delivered",
                    $"order {missing / 1000.0:0.#} t more, and enough to fill the bins that stand full at once", new KeyPath(DescriptionKind.Order, "mix_stock")));
            }
            else if (!schedule.Complete)
            {
                findings.Add(OrderFindings.MixShort.At(
                    $"{schedule.Times.Count(times => times is null)} of {draft.Bins.Count} bins can never be filled: the mix in the silo is too little for one more bin, and none comes",
                    "deliver more mix, or in smaller loads where the silo was full", new KeyPath(DescriptionKind.Order, "mix_stock")));
            }

            string proved = schedule.LateUnits == schedule.LateBound ? "fewer cannot be" : $"at least {schedule.LateBound} are";
            findings.Add(OrderFindings.Late.At(
                schedule.Complete
                    ? $"{schedule.LateUnits} of {OrderListing.Of(order).Count} units are dug out after {Text(order.Due)}, the last on {Text(calendar.Time(schedule.Finish))}; {proved}"
                    : $"{schedule.LateUnits} of {OrderListing.Of(order).Count} units are not dug out by {Text(order.Due)}",
                "relax a limit that is named beside this, or agree on a later date", new KeyPath(DescriptionKind.Order, "due")));
            findings.AddRange(new BindingSearch(order, draft.Tasks, draft.Rules, draft.Bins).Find());
        }

        if (!schedule.Complete)
        {
            return Refused();
        }

        AddDeliveries(draft);
        if (!schedule.Optimal && schedule.LateUnits == 0)
        {
            findings.Add(OrderFindings.NotProved.At(
                $"done on {Text(calendar.Time(schedule.Finish))}; whether before that, but not before {Text(calendar.Time(schedule.FinishBound))}, was not settled", "nothing to do unless every day counts",
                new KeyPath(DescriptionKind.Order, "")));
        }

        return PlanDrawer.Draw(reading, calendar, draft, lines, [.. findings.Items.Select(reading.Place)]);
    }

    // What the order uses up beyond what there will ever be, kg.
    private static double MissingMix(PlanDraft draft) => draft.Rules.Stock is not { } stock ? 0.0
        : draft.Tasks.Sum(task => (double)task.Spread - task.Reused) - stock.OnHand - stock.Deliveries.Sum(delivery => (double)delivery.Kilograms);

    private void AddDeliveries(PlanDraft draft)
    {
        if (draft.Rules.Stock is not { } stock)
        {
            return;
        }

        IReadOnlyList<int> turned = stock.Follow(draft.Schedule.Times.SelectMany((times, bin) =>
            new[] { (times!.Value.Start, -draft.Tasks[bin].Spread), (times.Value.DigEnd, draft.Tasks[bin].Reused) })).TurnedAway;
        for (int index = 0; index < turned.Count; index++)
        {
            if (turned[index] > 0 && stock.Deliveries[index].At <= draft.Schedule.Finish)
            {
                findings.Add(OrderFindings.DeliveryTooLarge.At(
                    $"of the delivery on {Text(order.MixStock!.Deliveries[index].On)} {turned[index] / 1000.0:0.#} t do not fit in the silo of {stock.Silo / 1000.0:0.#} t",
                    "deliver later or less; the plan does not count on the rest", new KeyPath(DescriptionKind.Order, "mix_stock.deliveries")));
            }
        }
    }

    private static string Text(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Text(DateTime time) => time.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
