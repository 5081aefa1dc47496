using Dewstone.Orders.Scheduling;

namespace Dewstone.Orders.Tests.Scheduling;

/// <summary>Seeded small yards with every kind of limit: what the scheduler gives is followed minute by minute, and no bound lies above a schedule that exists.</summary>
public sealed class SeededYardTests
{
    private ulong state = 99;

    [Fact]
    public void Schedules_hold_every_limit_and_no_bound_lies_above_them()
    {
        int proved = 0;
        for (int trial = 0; trial < 24; trial++)
        {
            BinTask[] tasks = [.. Enumerable.Range(0, 3 + Draw(4)).Select(_ => new BinTask
            {
                Minutes = [5 + Draw(20), trial % 3 == 0 ? 5 + Draw(20) : null],
                Set = Draw(60),
                Dig = 1 + Draw(15),
                Due = 60 + Draw(300),
                Units = 1 + Draw(3),
                Spread = 10 + Draw(20),
                Reused = Draw(10),
            })];
            YardRules rules = new()
            {
                Shifts = new WorkCalendar(Enumerable.Range(0, 60).Select(day => new TimeWindow(day * 100 + 10, day * 100 + 60))),
                Crew = new WorkCalendar(Enumerable.Range(0, 60).Select(day => new TimeWindow(day * 100, day * 100 + 40))),
                Change = Draw(5),
                Bins = 1 + Draw(3),
                CuringPlaces = 1 + Draw(3),
                Stock = trial % 2 == 0 ? new SiloStock(60, 80, [.. Enumerable.Range(1, 8).Select(n => new StockDelivery(90 * n, 30))]) : null,
            };

            BinSchedule schedule = BinScheduler.Solve(tasks, rules, 1.0);
            (int late, int finish) = SimpleBounds.Of(tasks, rules);

            Assert.True(schedule.Complete);
            AssertHeld(tasks, rules, schedule);
            Assert.True(late <= schedule.LateUnits && finish <= schedule.Finish);
            Assert.True(schedule.LateBound <= schedule.LateUnits && (schedule.LateBound < schedule.LateUnits || schedule.FinishBound <= schedule.Finish));
            proved += schedule.Optimal ? 1 : 0;
        }

        Assert.True(proved >= 12, $"{proved} of 24 searched through");
    }

    private static void AssertHeld(BinTask[] tasks, YardRules rules, BinSchedule schedule)
    {
        TaskTimes[] times = [.. schedule.Times.Select(t => t!.Value)];
        for (int bin = 0; bin < tasks.Length; bin++)
        {
            TaskTimes at = times[bin];
            Assert.Equal(tasks[bin].Minutes[at.Printer], at.PrintEnd - at.Start);
            Assert.Equal(tasks[bin].Dig, at.DigEnd - at.DigStart);
            Assert.True(at.DigStart >= at.PrintEnd + tasks[bin].Set);
            Assert.True(at.Start % 100 >= 10 && at.Start % 100 + at.PrintEnd - at.Start + rules.Change <= 60);
            Assert.True(at.DigStart % 100 + tasks[bin].Dig <= 40);
        }

        long stock = rules.Stock?.OnHand ?? 0;
        for (int minute = 0; minute <= times.Max(t => t.DigEnd); minute++)
        {
            Assert.True(times.Count(t => t.Start <= minute && t.DigEnd > minute) <= rules.Bins);
            Assert.True(times.Count(t => t.PrintEnd <= minute && t.DigEnd > minute) <= rules.CuringPlaces);
            Assert.True(times.Count(t => t.DigStart <= minute && t.DigEnd > minute) <= 1);
            Assert.All(times.Where(t => t.Start <= minute && t.PrintEnd + rules.Change > minute).GroupBy(t => t.Printer), printer => Assert.Single(printer));
            foreach (StockDelivery delivery in rules.Stock?.Deliveries.Where(d => d.At == minute) ?? [])
            {
                stock += Math.Clamp(rules.Stock!.Silo - stock, 0, delivery.Kilograms);
            }

            stock += Enumerable.Range(0, tasks.Length).Sum(bin => (times[bin].DigEnd == minute ? tasks[bin].Reused : 0) - (times[bin].Start == minute ? tasks[bin].Spread : 0));
            Assert.True(rules.Stock is null || stock >= 0);
        }
    }

    private int Draw(int below) => (int)(((state = state * 6364136223846793005UL + 1442695040888963407UL) >> 33) % (ulong)below);
}
