using Dewstone.Jobs.Folders;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Orders.Batches;

/// <summary>What stops one bin and not the rest.</summary>
internal static class BinFaults
{
    /// <summary>The outcome of a bin that was stopped.</summary>
    /// <param name="bin">Name of the bin.</param>
    /// <param name="fault">What stopped it; no cancellation.</param>
    public static BinOutcome Stopped(string bin, Exception fault)
    {
        string what = fault.Message.ReplaceLineEndings(" ");
        return fault switch
        {
            OutOfMemoryException => Of(JobFolderStatus.TryAgain, BatchFindings.BinOutOfMemory.At($"{bin} needs more memory than there is", "run again with --continue and fewer --threads")),
            _ when DiskFaults.IsDiskFault(fault) => Of(DiskFaults.StatusOf(fault), DiskFaults.FindingOf(fault, bin)),
            AggregateException several => Stopped(bin, several.InnerExceptions[0]),
            _ => Of(JobFolderStatus.Written, BatchFindings.BinFault.At($"{bin} was not made ({fault.GetType().Name}: {what})", "report it with the order's files"), ours: true),
        };

        BinOutcome Of(JobFolderStatus status, Diagnostic finding, bool ours = false) => new(bin, null, [], Kept: false, status, ours, [finding]);
    }
}
