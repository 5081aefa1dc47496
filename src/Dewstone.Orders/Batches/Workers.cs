using Dewstone.Model.Results;
using Dewstone.Orders.Plans;

namespace Dewstone.Orders.Batches;

/// <summary>How many bins are made at once: as many as there are threads, while the memory they need stays within bounds.</summary>
internal static class Workers
{
    // Measured: see the guide. The program itself, then what each fine cell of a bin's window costs at the peak of a solve or a bin.
    private const long ProgramBytes = 150L << 20;
    private const long BytesPerCell = 60;
    private const long BudgetBytes = 1400L << 20;

    /// <summary>Bins made at once.</summary>
    public static int Of(IReadOnlyList<PlannedBin> bins, PlannedWork work, int cells, Parallelism parallelism)
    {
        long one = bins.Count == 0 ? 0 : bins.Max(bin => Bytes(bin, work, cells));
        long room = one == 0 ? int.MaxValue : Math.Max(1, (BudgetBytes - ProgramBytes) / one);
        return (int)Math.Max(1, Math.Min(Math.Min(parallelism.Threads, bins.Count), room));
    }

    /// <summary>Bytes one bin needs at the most.</summary>
    public static long Bytes(PlannedBin bin, PlannedWork work, int cells) =>
        BytesPerCell * cells * cells * cells * Math.Max(work.Layers(bin), 1) * Math.Max(1, bin.Units.Sum(unit => work.Voxels(bin, work.Unit(unit.Mark)) / Math.Max(1, work.Layers(bin))));
}
