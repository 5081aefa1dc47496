using Dewstone.Jobs.Folders;
using Dewstone.Model.Diagnostics;
using Dewstone.Orders.Batches;

namespace Dewstone.Cli.Commands;

/// <summary>What came of <c>order compile</c>.</summary>
/// <param name="Name">Name of the order; its file's name when it could not be read.</param>
/// <param name="Folder">The order's folder.</param>
/// <param name="Bins">What became of each bin; empty when nothing was begun.</param>
/// <param name="Findings">All findings there are to say, units' draws included.</param>
/// <param name="ExitCode">What to end with.</param>
internal sealed record OrderCompileOutcome(string Name, string Folder, IReadOnlyList<BinOutcome> Bins, IReadOnlyList<Diagnostic> Findings, int ExitCode)
{
    /// <summary>Exit code of a bin with its units.</summary>
    public static int CodeOf(BinOutcome bin) => bin.OurFault ? Cli.ExitCode.OurFault
        : bin.Status == JobFolderStatus.Written ? bin.Record?.ExitCode ?? Cli.ExitCode.OurFault : Cli.ExitCode.Of(bin.Status, Cli.ExitCode.Done);
}
