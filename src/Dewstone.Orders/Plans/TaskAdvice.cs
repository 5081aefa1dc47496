namespace Dewstone.Orders.Plans;

/// <summary>
/// Into how many tasks the compile of an order is best cut for a batch queue, and what each takes at most. Measured on two processors of a small server and doubled: a bound,
/// not an estimate.
/// </summary>
/// <param name="Tasks">Number of tasks.</param>
/// <param name="SecondsATask">Upper bound of the time of one, with one thread.</param>
/// <param name="MegabytesATask">Upper bound of its memory.</param>
public sealed record TaskAdvice(int Tasks, int SecondsATask, int MegabytesATask)
{
    private const int CellsPerVoxel = 8 * 8 * 8;

    // A task of some minutes: the queue costs about a second a task, and a node that fails loses what it had begun.
    private const double SecondsWanted = 300.0;

    /// <summary>Processor time of a cell, a unit solved and its bin simulated; twice what was measured.</summary>
    internal const double SecondsACell = 1.2e-5;

    /// <summary>Memory of a cell; twice what was measured.</summary>
    internal const double BytesACell = 200.0;

    private const double MegabytesAlways = 250.0;

    /// <summary>Advises.</summary>
    /// <param name="positions">Needle positions, all layers, by bin: of its units as solved alone and of the bin itself.</param>
    /// <param name="largest">Most positions of one unit or bin.</param>
    /// <returns>The advice.</returns>
    public static TaskAdvice Of(IReadOnlyList<long> positions, long largest)
    {
        ArgumentNullException.ThrowIfNull(positions);
        double seconds = positions.Sum() * CellsPerVoxel * SecondsACell;
        int tasks = Math.Clamp((int)Math.Ceiling(seconds / SecondsWanted), 1, positions.Count), binsATask = (positions.Count + tasks - 1) / tasks;
        return new TaskAdvice(
            tasks,
            (int)Math.Ceiling(positions.OrderDescending().Take(binsATask).Sum() * CellsPerVoxel * SecondsACell),
            (int)Math.Ceiling(MegabytesAlways + largest * CellsPerVoxel * BytesACell / 1e6));
    }
}
