using System.Text;
using Dewstone.Model.Diagnostics;
using Dewstone.Orders.Gathering;

namespace Dewstone.Cli.Rendering;

/// <summary>What <c>order gather</c> says.</summary>
internal static class GatherText
{
    /// <summary>The text.</summary>
    /// <param name="result">What came of it; null when nothing could be read.</param>
    /// <param name="findings">All findings.</param>
    /// <param name="folder">The order's folder.</param>
    /// <param name="colour">Whether to colour levels.</param>
    /// <param name="quiet">Leave out notes.</param>
    /// <returns>Plain text.</returns>
    public static string Of(GatherResult? result, IReadOnlyList<Diagnostic> findings, string folder, bool colour, bool quiet)
    {
        StringBuilder text = new(FindingText.Of(findings, colour, quiet));

        if (result is null)
        {
            return text.ToString();
        }

        if (result.Order is not { } order)
        {
            FolderContents there = result.Contents;
            text.Append($"{folder}: not complete, nothing written; {there.Units.Count} units and {there.Bins.Count} bins are ready\n");
            foreach (MissingTasks tasks in there.Tasks)
            {
                text.Append($"  missing tasks of {tasks.Of}: {tasks.Numbers}\n");
            }

            return text.ToString();
        }

        BinTotals totals = order.Totals;
        text.Append($"{order.Order.Name}: complete, {CountText.Of(order.Units.Count, "unit")} in {CountText.Of(order.Bins.Count, "bin")} over {CountText.Of(order.Nights.Count, "night")}\n");
        text.Append($"  mix      {totals.SpreadKilograms / 1000.0:0.0} t spread, {totals.HardenedKilograms / 1000.0:0.0} t harden, {totals.ReusableKilograms / 1000.0:0.0} t can be spread again\n");
        text.Append($"  water    {totals.WaterLitres:0} L, {totals.FlushLitres:0} L to flush; binder {totals.BinderKilograms:0} kg; CO2 {totals.CarbonKilograms:0} kg\n");
        text.Append($"  cost     {string.Join(" + ", totals.Cost.Select(cost => $"{cost.Amount:0.00} {cost.Currency}"))}; printers {totals.PrinterSeconds / 3600.0:0.0} h\n");
        if (order.Loads is { } loads)
        {
            text.Append($"  barge    {CountText.Of(loads.Trips.Count, "trip")}{(loads.LeastTrips > 1 ? $", no loading needs fewer than {loads.LeastTrips}" : "")}\n");
        }

        return text.Append($"  {Path.Combine(folder, OverviewPage.Path)}\n").ToString();
    }
}
