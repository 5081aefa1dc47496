using System.Text;
using Dewstone.Cli.Commands;
using Dewstone.Orders.Batches;

namespace Dewstone.Cli.Rendering;

/// <summary>What <c>order status</c> says: a line for each bin that is not done, with the units that keep it; then how much is done.</summary>
internal static class OrderStatusText
{
    /// <summary>The text.</summary>
    /// <param name="outcome">What was found.</param>
    /// <param name="colour">Whether to colour levels.</param>
    /// <param name="quiet">Only the last lines.</param>
    /// <returns>Plain text.</returns>
    public static string Of(OrderStatusOutcome outcome, bool colour, bool quiet)
    {
        StringBuilder text = new(FindingText.Of(outcome.Findings, colour, quiet: false));

        if (outcome.State is not { } state)
        {
            return text.Append($"{outcome.Name}: {(outcome.ExitCode == ExitCode.No ? $"not begun in {outcome.Folder}" : "cannot be told")}\n").ToString();
        }

        ILookup<string, UnitStatus> units = state.Units.ToLookup(unit => unit.Bin);
        foreach (BinStatus bin in quiet ? [] : state.Bins.Where(bin => bin.State != WorkState.Done))
        {
            string open = string.Join(", ", units[bin.Planned.Name].Where(unit => unit.State != WorkState.Done).Select(unit => $"{unit.Mark} {Word(unit.State)}"));
            text.Append($"  {bin.Planned.Name,-14} {Word(bin.State),-8} {open}\n");
        }

        foreach ((int tasks, string missing) in outcome.MissingTasks.Where(missing => missing.Missing.Length > 0))
        {
            text.Append($"  tasks to run of {tasks}: {missing}\n");
        }

        string bins = Counts(state.Bins.Select(bin => bin.State)), ofUnits = Counts(state.Units.Select(unit => unit.State));
        return text.Append($"{outcome.Name}: {(state.Complete ? "complete" : "NOT COMPLETE")}; {CountText.Of(state.Bins.Count, "bin")}: {bins}; {CountText.Of(state.Units.Count, "unit")}: {ofUnits}\n").ToString();
    }

    /// <summary>A state in a word.</summary>
    public static string Word(WorkState state) => state switch
    {
        WorkState.Done => "done",
        WorkState.Stale => "stale",
        WorkState.Failed => "failed",
        _ => "missing",
    };

    private static string Counts(IEnumerable<WorkState> states) =>
        string.Join(", ", states.CountBy(state => state).OrderBy(count => count.Key).Select(count => $"{count.Value} {Word(count.Key)}"));
}
