using Dewstone.Orders.Scheduling;

namespace Dewstone.Orders.Tests.Scheduling;

/// <summary>Published instances through the scheduler that the command uses, each a bin printed (and dug out) in the terms of the yard.</summary>
public sealed class PublishedScheduleTests
{
    /// <summary>
    /// Tight family of longest-first list scheduling on m machines: 2m-1 2m-1 ... m+1 m+1 m m m takes it 4m-1, the best 3m (Graham 1969, "Bounds on multiprocessing timing
    /// anomalies", SIAM J. Appl. Math. 17: ratio 4/3 - 1/(3m)).
    /// </summary>
    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void Tight_family_of_longest_first_reaches_its_optimum(int machines)
    {
        int[] jobs = [.. Enumerable.Range(0, machines - 1).SelectMany(i => new[] { 2 * machines - 1 - i, 2 * machines - 1 - i }), machines, machines, machines];

        BinSchedule schedule = OnMachines(machines, jobs);

        Assert.Equal(4 * machines - 1, LongestFirst(machines, jobs));
        Assert.Equal(3 * machines, schedule.Finish);
        Assert.True(schedule.Optimal);
    }

    /// <summary>4 5 6 7 8: on two machines in this order 18, at best 15; on three 13 and 11 (the usual example of list scheduling).</summary>
    [Theory]
    [InlineData(2, 18, 15)]
    [InlineData(3, 13, 11)]
    public void List_example_reaches_its_optimum(int machines, int list, int best)
    {
        int[] jobs = [4, 5, 6, 7, 8];

        Assert.Equal(list, InOrder(machines, jobs));
        Assert.Equal(best, OnMachines(machines, jobs).Finish);
    }

    /// <summary>A night of twelve prints on three printers: sum 598, so that no schedule is below ceil(598 / 3) = 200; longest first takes 203.</summary>
    [Fact]
    public void Night_of_twelve_prints_on_three_printers_reaches_the_bound_of_its_sum()
    {
        int[] jobs = [95, 83, 71, 62, 58, 47, 44, 39, 33, 28, 21, 17];

        BinSchedule schedule = OnMachines(3, jobs);

        Assert.Equal(203, LongestFirst(3, jobs));
        Assert.Equal((200, 200), (schedule.Finish, schedule.FinishBound));
    }

    /// <summary>max(longest, ceil(sum / m)) &lt;= best &lt;= longest first &lt;= (4/3 - 1/(3m)) best (Graham 1969), over seeded jobs.</summary>
    [Fact]
    public void Finish_lies_between_the_bounds_of_list_scheduling()
    {
        ulong state = 12345;
        for (int trial = 0; trial < 8; trial++)
        {
            int machines = 2 + trial % 3;
            int[] jobs = [.. Enumerable.Range(0, 8).Select(_ => 1 + (int)((state = state * 6364136223846793005UL + 1442695040888963407UL) >> 33) % 60)];

            BinSchedule schedule = OnMachines(machines, jobs);

            int longest = LongestFirst(machines, jobs);
            Assert.True(schedule.Optimal);
            Assert.InRange(schedule.Finish, Math.Max(jobs.Max(), (jobs.Sum() + machines - 1) / machines), longest);
            Assert.True(longest * 3 * machines <= (4 * machines - 1) * schedule.Finish);
        }
    }

    /// <summary>Two stages, fill then bind: (3,6)(7,2)(4,7)(5,3)(2,5)(6,4) takes 29, in the order 5 1 3 6 4 2 (Johnson 1954; the least of all 720 orders).</summary>
    [Fact]
    public void Two_stages_reach_the_least_of_all_orders()
    {
        (int First, int Second)[] jobs = [(3, 6), (7, 2), (4, 7), (5, 3), (2, 5), (6, 4)];
        BinTask[] tasks = [.. jobs.Select(job => new BinTask { Minutes = [job.First], Dig = job.Second })];

        BinSchedule schedule = BinScheduler.Solve(tasks, new YardRules { Crew = WorkCalendar.Always });

        Assert.Equal(29, Permutations(6).Min(order => Flow(jobs, order)));
        Assert.Equal(29, schedule.Finish);
        Assert.True(schedule.Optimal);
    }

    /// <summary>Jobs (p, due) = (4,6)(3,7)(7,9)(5,11)(2,12)(6,20) on one machine: two are late at best (Moore 1968, Hodgson; the least of all 720 orders).</summary>
    [Fact]
    public void Fewest_jobs_are_late()
    {
        (int Minutes, int Due)[] jobs = [(4, 6), (3, 7), (7, 9), (5, 11), (2, 12), (6, 20)];
        BinTask[] tasks = [.. jobs.Select(job => new BinTask { Minutes = [job.Minutes], Due = job.Due })];

        BinSchedule schedule = BinScheduler.Solve(tasks, new YardRules());

        Assert.Equal(2, Permutations(6).Min(order => Late(jobs, order)));
        Assert.Equal((2, 2), (schedule.LateUnits, schedule.LateBound));
        Assert.True(schedule.Optimal);
    }

    private static BinSchedule OnMachines(int machines, int[] jobs) =>
        BinScheduler.Solve([.. jobs.Select(job => new BinTask { Minutes = [.. Enumerable.Repeat((int?)job, machines)] })], new YardRules());

    private static int LongestFirst(int machines, int[] jobs) => InOrder(machines, [.. jobs.OrderDescending()]);

    private static int InOrder(int machines, int[] jobs)
    {
        int[] ends = new int[machines];
        foreach (int job in jobs)
        {
            ends[Array.IndexOf(ends, ends.Min())] += job;
        }

        return ends.Max();
    }

    private static int Flow((int First, int Second)[] jobs, int[] order)
    {
        int first = 0, second = 0;
        foreach (int job in order)
        {
            first += jobs[job].First;
            second = Math.Max(first, second) + jobs[job].Second;
        }

        return second;
    }

    private static int Late((int Minutes, int Due)[] jobs, int[] order)
    {
        int time = 0, late = 0;
        foreach (int job in order)
        {
            time += jobs[job].Minutes;
            late += time > jobs[job].Due ? 1 : 0;
        }

        return late;
    }

    private static IEnumerable<int[]> Permutations(int count) => count == 0 ? [[]] : Permutations(count - 1).SelectMany(
        shorter => Enumerable.Range(0, count).Select(at => (int[])[.. shorter[..at], count - 1, .. shorter[at..]]));
}
