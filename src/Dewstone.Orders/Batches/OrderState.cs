using Dewstone.Orders.Plans;
using Dewstone.Reading;

namespace Dewstone.Orders.Batches;

/// <summary>How far an order is, told from the files of its folder alone; nothing is written.</summary>
public sealed class OrderState
{
    private readonly int[] taskCounts;
    private readonly long[] costs;

    private OrderState(IReadOnlyList<BinStatus> bins, IReadOnlyList<UnitStatus> units, long[] costs, int[] tasks) =>
        (Bins, Units, this.costs, taskCounts) = (bins, units, costs, tasks);

    /// <summary>The bins, in the order of the plan.</summary>
    public IReadOnlyList<BinStatus> Bins { get; }

    /// <summary>The units, bin by bin in the order of the plan.</summary>
    public IReadOnlyList<UnitStatus> Units { get; }

    /// <summary>Whether every bin is done.</summary>
    public bool Complete => Bins.All(bin => bin.State == WorkState.Done);

    /// <summary>Numbers of tasks that tasks of this order were started with, as far as they have reported.</summary>
    public IReadOnlyList<int> TaskCounts => taskCounts;

    /// <summary>Tasks that must run, or run again, when the order is cut into so many.</summary>
    /// <param name="tasks">Number of tasks.</param>
    /// <returns>Tasks from 0 with a bin that is missing or stale.</returns>
    public IReadOnlyList<int> MissingTasks(int tasks)
    {
        int[] taskOf = TaskSlice.Assign(costs, tasks);
        return [.. Bins.Index().Where(bin => bin.Item.State is WorkState.Missing or WorkState.Stale).Select(bin => taskOf[bin.Index]).Distinct().Order()];
    }

    /// <summary>Reads how far an order is.</summary>
    /// <param name="reading">The order, read without errors.</param>
    /// <param name="plan">Its plan, which fits it.</param>
    /// <param name="folder">Its folder.</param>
    /// <param name="toolVersion">Version of the tool.</param>
    /// <returns>How far it is.</returns>
    /// <exception cref="IOException">A file stands but cannot be read.</exception>
    public static OrderState Read(OrderReading reading, OrderPlan plan, OrderFolder folder, string toolVersion)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(folder);
        OrderPin? pin = RecordJson.ReadPin(SharedFile.TryRead(folder.Pin));
        bool stale = pin is null || OrderBegin.Hold(OrderBegin.PinOf(reading, pin.Cells, toolVersion), folder) is not null;
        PlannedWork work = new(new BatchQuestion
        {
            Reading = reading,
            Plan = plan,
            Folder = folder,
            Cells = pin?.Cells ?? 0,
            Parallelism = new(1),
            ToolVersion = toolVersion,
        });
        DoneBins done = new(folder);
        List<BinStatus> bins = [];
        List<UnitStatus> units = [];
        foreach (PlannedBin bin in plan.Bins)
        {
            BinRecord? record = done.Record(bin.Name);
            bool old = record is not null && (stale || record.Key != work.Key(bin));
            bool whole = record is not null && done.JobIsWhole(record);
            List<UnitStatus> own = [.. bin.Units.Select(unit => Of(bin, unit.Mark, done.Unit(unit.Mark), stale || old))];
            units.AddRange(own);
            bins.Add(new BinStatus(
                bin,
                record is null || !whole || own.Exists(unit => unit.State == WorkState.Missing) ? WorkState.Missing
                    : old ? WorkState.Stale : record.ExitCode == 0 ? WorkState.Done : WorkState.Failed,
                record));
        }

        return new OrderState(bins, units, [.. plan.Bins.Select(work.Cost)], ReadTaskCounts(folder));
    }

    private static UnitStatus Of(PlannedBin bin, string mark, UnitRecord? record, bool stale) => new(
        mark, bin.Name,
        record is null || record.Bin != bin.Name ? WorkState.Missing : stale ? WorkState.Stale : record.State == UnitState.Solved ? WorkState.Done : WorkState.Failed,
        record);

    private static int[] ReadTaskCounts(OrderFolder folder) => !Directory.Exists(folder.Tasks) ? [] :
    [
        .. Directory.EnumerateFiles(folder.Tasks, "task-*.json").Select(file => RecordJson.ReadTask(SharedFile.TryRead(file))?.Tasks).OfType<int>().Distinct().Order(),
    ];
}
