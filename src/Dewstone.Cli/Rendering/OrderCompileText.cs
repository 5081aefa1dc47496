using System.Text;
using Dewstone.Cli.Commands;
using Dewstone.Orders.Batches;

namespace Dewstone.Cli.Rendering;

/// <summary>What <c>order compile</c> says: findings, a line for each bin that is not good, one line over all.</summary>
internal static class OrderCompileText
{
    /// <summary>The text.</summary>
    /// <param name="outcome">What came of it.</param>
    /// <param name="colour">Whether to colour levels.</param>
    /// <param name="quiet">Leave out notes.</param>
    /// <returns>Plain text.</returns>
    public static string Of(OrderCompileOutcome outcome, bool colour, bool quiet)
    {
        StringBuilder text = new(FindingText.Of(outcome.Findings, colour, quiet));

        foreach (BinOutcome bin in outcome.Bins.Where(bin => OrderCompileOutcome.CodeOf(bin) != ExitCode.Done))
        {
            string failed = string.Join(", ", bin.Units.Where(unit => unit.State == UnitState.Failed).Select(unit => unit.Mark));
            text.Append($"{bin.Name}: {StateName(bin)}{(failed.Length == 0 ? "" : $", without {failed}")} (exit code {OrderCompileOutcome.CodeOf(bin)})\n");
        }

        text.Append($"{outcome.Name}: {Verdict(outcome)}\n");
        return text.ToString();
    }

    /// <summary>What a bin is, in a word or two.</summary>
    public static string StateName(BinOutcome bin) => bin.Record switch
    {
        null => "stopped",
        { Folder: "" } => "no job",
        { Folder: var folder } when folder.EndsWith(".held.job", StringComparison.Ordinal) => "held",
        _ => "ready",
    };

    private static string Verdict(OrderCompileOutcome outcome)
    {
        if (outcome.Bins.Count == 0)
        {
            return outcome.ExitCode == ExitCode.Done ? "nothing to do for this task" : "not begun";
        }

        int units = outcome.Bins.Sum(bin => bin.Units.Count), failed = outcome.Bins.Sum(bin => bin.Units.Count(unit => unit.State == UnitState.Failed));
        int ready = outcome.Bins.Count(bin => StateName(bin) == "ready"), kept = outcome.Bins.Count(bin => bin.Kept);
        int bins = outcome.Bins.Count;
        return $"{units - failed} of {units} units solved, {ready} of {CountText.Of(bins, "bin")} ready to print{(kept > 0 ? $" ({kept} done before)" : "")}: {outcome.Folder}";
    }
}
