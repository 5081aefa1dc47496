namespace Dewstone.Orders.Batches;

/// <summary>Which bins a task of several makes: a pure function of the bins' costs, the same in every task, so that no task need speak to another.</summary>
/// <remarks>
/// The longest job goes first to the task with the least to do. The busiest task then has at most 4/3 - 1/(3 N) of the least possible.
/// Source: Graham 1969, Bounds on Multiprocessing Timing Anomalies, theorem 3.
/// </remarks>
public static class TaskSlice
{
    /// <summary>The bins of one task.</summary>
    /// <param name="costs">Cost of each bin, in the order of the plan.</param>
    /// <param name="task">Task, from 0.</param>
    /// <param name="tasks">Number of tasks, more than <paramref name="task"/>.</param>
    /// <returns>Indices of its bins, ascending; none when there are more tasks than bins.</returns>
    public static IReadOnlyList<int> Of(IReadOnlyList<long> costs, int task, int tasks)
    {
        int[] taskOf = Assign(costs, tasks);
        ArgumentOutOfRangeException.ThrowIfNegative(task);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(task, tasks);
        return [.. Enumerable.Range(0, taskOf.Length).Where(bin => taskOf[bin] == task)];
    }

    /// <summary>The task of each bin.</summary>
    /// <param name="costs">Cost of each bin, in the order of the plan.</param>
    /// <param name="tasks">Number of tasks, 1 or more.</param>
    /// <returns>Task of each bin, from 0.</returns>
    public static int[] Assign(IReadOnlyList<long> costs, int tasks)
    {
        ArgumentNullException.ThrowIfNull(costs);
        ArgumentOutOfRangeException.ThrowIfLessThan(tasks, 1);
        PriorityQueue<int, (long Load, int Task)> free = new(Enumerable.Range(0, Math.Min(tasks, costs.Count)).Select(task => (task, (0L, task))));
        int[] taskOf = new int[costs.Count];
        foreach (int bin in Enumerable.Range(0, costs.Count).OrderByDescending(bin => costs[bin]).ThenBy(bin => bin))
        {
            free.TryDequeue(out int task, out (long Load, int Task) at);
            taskOf[bin] = task;
            free.Enqueue(task, (at.Load + costs[bin], task));
        }

        return taskOf;
    }
}
