using Dewstone.Model.Results;
using Dewstone.Orders.Plans;

namespace Dewstone.Orders.Batches;

/// <summary>How many bins are made at once: as many as there are threads, while the memory they need stays within bounds.</summary>
internal static class Workers
{
    // Measured: the program itself, then what each fine cell of a window needs at the least while a unit is solved and stood in its bin.
    private const long BudgetBytes = 1200L << 20;
    private const long ProgramBytes = 100L << 20;
    private const long BytesPerCell = 90;

    /// <summary>Bins made at once.</summary>
    public static int Of(IReadOnlyList<PlannedBin> bins, PlannedWork work, int cells, Parallelism parallelism)
    {
        long room = Math.Max(1, (BudgetBytes - ProgramBytes) / Largest(bins, work, cells));
        return (int)Math.Max(1, Math.Min(Math.Min(parallelism.Threads, bins.Count), room));
    }

    /// <summary>Bound to set to the heap, bytes: the budget, or half as much again as the largest bin alone needs.</summary>
    public static long BoundBytes(IReadOnlyList<PlannedBin> bins, PlannedWork work, int cells) => Math.Max(BudgetBytes, ProgramBytes + 3 * Largest(bins, work, cells) / 2);

    // A bin is wetted over the window of all its units together, at the most the sum of theirs.
    private static long Largest(IReadOnlyList<PlannedBin> bins, PlannedWork work, int cells) =>
        Math.Max(1, bins.Select(bin => BytesPerCell * cells * cells * cells * work.Cost(bin)).DefaultIfEmpty(0).Max());
}
