using Dewstone.Compute.Numerics;
using Dewstone.Orders.Batches;

namespace Dewstone.Orders.Tests.Batches;

public sealed class TaskSliceTests
{
    // Graham 1969, Bounds on Multiprocessing Timing Anomalies, the example after theorem 3: 2m + 1 jobs of lengths 2m - 1, 2m - 1, 2m - 2, 2m - 2, ...,
    // m + 1, m + 1, m, m, m. The least possible is 3m; longest first needs 4m - 1, which is (4/3 - 1/(3m)) times that, so the bound is reached.
    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(40)]
    public void The_worst_family_comes_out_at_the_published_bound(int tasks)
    {
        long[] costs = [.. Enumerable.Range(tasks + 1, tasks - 1).Reverse().SelectMany(cost => new long[] { cost, cost }), tasks, tasks, tasks];
        Assert.Equal(2 * tasks + 1, costs.Length);
        Assert.Equal(4 * tasks - 1, Busiest(costs, tasks));
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(1, 7)]
    [InlineData(50, 4)]
    [InlineData(1000, 16)]
    [InlineData(0, 3)]
    public void Slices_cover_each_bin_once_and_no_task_exceeds_the_bound(int bins, int tasks)
    {
        long[] costs = [.. Enumerable.Range(0, bins).Select(bin => (long)(SplitMix64.Output(5, (ulong)bin) % 1000) + 1)];

        IReadOnlyList<int>[] slices = [.. Enumerable.Range(0, tasks).Select(task => TaskSlice.Of(costs, task, tasks))];

        Assert.Equal(Enumerable.Range(0, bins), slices.SelectMany(slice => slice).Order());
        Assert.All(slices, slice => Assert.Equal(slice.Order(), slice));
        // Graham 1966, Bounds for Certain Multiprocessing Anomalies: no list does worse than an even share and (1 - 1/N) of the longest.
        Assert.True(tasks * Busiest(costs, tasks) <= costs.Sum() + (tasks - 1) * costs.DefaultIfEmpty(0).Max());
    }

    // Twelve jobs on three machines: longest first comes to 203, the least possible is 200 (worked by hand and by trying all).
    [Fact]
    public void Twelve_bins_on_three_tasks_come_out_as_worked_by_hand() => Assert.Equal(203, Busiest([95, 83, 71, 62, 58, 47, 44, 39, 33, 28, 21, 17], 3));

    [Fact]
    public void More_tasks_than_bins_leave_the_last_ones_empty()
    {
        Assert.Equal([1], TaskSlice.Of([3, 9], 0, 5));
        Assert.Equal([0], TaskSlice.Of([3, 9], 1, 5));
        Assert.Empty(TaskSlice.Of([3, 9], 4, 5));
    }

    [Fact]
    public void A_task_outside_the_count_is_a_fault_of_the_caller()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => TaskSlice.Of([1], 2, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => TaskSlice.Of([1], 0, 0));
    }

    [Theory]
    [InlineData("", new int[0])]
    [InlineData("0", new[] { 0 })]
    [InlineData("2,7-9", new[] { 9, 7, 2, 8, 8 })]
    [InlineData("0-1,3,5-6", new[] { 0, 1, 3, 5, 6 })]
    public void Task_numbers_are_written_as_queues_write_arrays(string text, int[] numbers) => Assert.Equal(text, TaskNumbers.Text(numbers));

    private static long Busiest(long[] costs, int tasks) =>
        TaskSlice.Assign(costs, tasks).Zip(costs).GroupBy(bin => bin.First, bin => bin.Second).Select(task => task.Sum()).DefaultIfEmpty(0).Max();
}
