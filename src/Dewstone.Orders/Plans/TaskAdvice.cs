namespace Dewstone.Orders.Plans;

/// <summary>
/// Into how many tasks the compile of an order is best cut for a batch queue, and what each takes at most: twice the processor time that was measured, and the bound that is set to
/// the heap. Draws that fail and are replaced are not in it.
/// </summary>
/// <param name="Tasks">Number of tasks.</param>
/// <param name="SecondsATask">Upper bound of the time of one, with one thread.</param>
/// <param name="MegabytesATask">Upper bound of its memory.</param>
public sealed record TaskAdvice(int Tasks, int SecondsATask, int MegabytesATask)
{
    private const int CellsPerVoxel = 8 * 8 * 8;

    // A task of some minutes: the queue costs about a second a task, and a node that fails loses what it had begun.
    private const double SecondsWanted = 300.0;

    // Processor time of a cell, a unit solved with all checks and its bin simulated: 24 s for 11 million of them, doubled.
    private const double SecondsACell = 4.5e-6;

    // The heap's bound while an order is compiled, and the program and its libraries beside it.
    private const double BytesACell = 135.0, LeastHeapMegabytes = 1260.0, HeapMegabytes = 105.0, BesideHeapMegabytes = 150.0;

    /// <summary>Advises.</summary>
    /// <param name="positions">Needle positions, all layers, by bin: of its units as solved alone and of the bin itself.</param>
    /// <param name="largest">Most positions of the units of one bin together, or of a bin.</param>
    /// <returns>The advice.</returns>
    public static TaskAdvice Of(IReadOnlyList<long> positions, long largest)
    {
        ArgumentNullException.ThrowIfNull(positions);
        double seconds = positions.Sum() * CellsPerVoxel * SecondsACell;
        int tasks = Math.Clamp((int)Math.Ceiling(seconds / SecondsWanted), 1, positions.Count), binsATask = (positions.Count + tasks - 1) / tasks;
        return new TaskAdvice(
            tasks,
            (int)Math.Ceiling(positions.OrderDescending().Take(binsATask).Sum() * CellsPerVoxel * SecondsACell),
            (int)Math.Ceiling(Math.Max(LeastHeapMegabytes, HeapMegabytes + largest * CellsPerVoxel * BytesACell / 1e6) + BesideHeapMegabytes));
    }
}
