using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;
using Dewstone.Jobs.Folders;
using Dewstone.Model.Results;
using Dewstone.Orders.Plans;

namespace Dewstone.Orders.Batches;

/// <summary>Compiles an order, or a task's share of it, bin by bin; one that fails does not stop the rest.</summary>
public static class OrderCompiler
{
    /// <summary>Compiles.</summary>
    /// <param name="question">What to compile.</param>
    /// <param name="progress">Told after each unit; may be null.</param>
    /// <param name="cancellation">Looked at within; what was finished then stands.</param>
    /// <returns>What became of each bin.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static BatchResult Compile(BatchQuestion question, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(question);
        if (PlanFit.Check(question.Reading, question.Plan) is { } unfit)
        {
            return new BatchResult([], [unfit]);
        }

        PlannedWork work = new(question);
        PlannedBin[] bins = Slice(question, work);
        BinOutcome?[] outcomes = new BinOutcome?[bins.Length];
        int workers = Workers.Of(bins, work, question.Cells, question.Parallelism);
        Parallelism each = new(Math.Max(1, question.Parallelism.Threads / workers));
        UnitStore store = new(question.Folder, each);
        BinMaker maker = new(question, work, store, each);
        DoneBins done = new(question.Folder);
        Counter counter = new(bins.Sum(bin => bin.Units.Count), bins.Length, progress);
        JobFolderRecovery.SweepOrphans(question.Folder.Bins);
        LeftoverSweep.Sweep(question.Folder);
        try
        {
            // One by one in the order of the plan: what is printed first is there first.
            Parallel.ForEach(
                Partitioner.Create(Enumerable.Range(0, bins.Length), EnumerablePartitionerOptions.NoBuffering),
                new ParallelOptions { MaxDegreeOfParallelism = workers, CancellationToken = cancellation }, index =>
            {
                outcomes[index] = One(bins[index], question.Continue ? done : null, work, maker, counter, cancellation);
                counter.BinDone();
            });
        }
        catch (AggregateException several)
        {
            ExceptionDispatchInfo.Throw(several.InnerExceptions[0]);
        }

        return new BatchResult([.. outcomes.Select(outcome => outcome!)], store.Damaged());
    }

    /// <summary>Memory that is set as the bound while an order is compiled: left to itself, the heap grows to twice what it needs before it is tidied.</summary>
    /// <param name="question">What to compile; its plan fits.</param>
    /// <returns>Bytes.</returns>
    public static long MemoryBytes(BatchQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        PlannedWork work = new(question);
        return Workers.BoundBytes(question.Plan.Bins, work, question.Cells);
    }

    /// <summary>The bins of the question's task, in the order of the plan.</summary>
    private static PlannedBin[] Slice(BatchQuestion question, PlannedWork work)
    {
        IReadOnlyList<PlannedBin> all = question.Plan.Bins;
        return question.Task is not { } task ? [.. all] : [.. TaskSlice.Of([.. all.Select(work.Cost)], task, question.Tasks).Select(index => all[index])];
    }

    private static BinOutcome One(PlannedBin bin, DoneBins? done, PlannedWork work, BinMaker maker, Counter counter, CancellationToken cancellation)
    {
        try
        {
            if (done?.Find(bin, work.Key(bin)) is { } found)
            {
                counter.UnitsDone(bin.Units.Count);
                return new BinOutcome(bin.Name, found.Bin, found.Units, Kept: true, JobFolderStatus.Written, OurFault: false, []);
            }

            return maker.Make(bin, () => counter.UnitsDone(1), cancellation);
        }
        catch (Exception fault) when (fault is not OperationCanceledException)
        {
            return BinFaults.Stopped(bin.Name, fault);
        }
    }

    private sealed class Counter(int units, int bins, IProgress<Progress>? progress)
    {
        private readonly Lock gate = new();
        private int unitsDone, binsDone;

        public void UnitsDone(int count)
        {
            lock (gate)
            {
                unitsDone += count;
                Tell();
            }
        }

        public void BinDone()
        {
            lock (gate)
            {
                binsDone++;
                Tell();
            }
        }

        private void Tell() => progress?.Report(new Progress("units", units == 0 ? 1.0 : Math.Min(1.0, (double)unitsDone / units), $"{unitsDone} of {units}, {binsDone} of {bins} bins done"));
    }
}
