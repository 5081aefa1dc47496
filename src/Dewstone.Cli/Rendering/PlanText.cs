using System.Globalization;
using System.Text;
using Dewstone.Model.Diagnostics;
using Dewstone.Orders.Plans;

namespace Dewstone.Cli.Rendering;

/// <summary>A plan in a few lines.</summary>
internal static class PlanText
{
    /// <summary>The text.</summary>
    /// <param name="result">What planning gave.</param>
    /// <param name="folder">Where the files stand.</param>
    /// <param name="findings">All findings.</param>
    /// <param name="colour">Whether to colour levels.</param>
    /// <param name="quiet">Leave out notes.</param>
    /// <returns>Plain text.</returns>
    public static string Of(PlanningResult result, string folder, IReadOnlyList<Diagnostic> findings, bool colour, bool quiet)
    {
        StringBuilder text = new(FindingText.Of(findings, colour, quiet));

        if (result is not { Plan: { } plan, Figures: { } figures })
        {
            return text.Append("no plan: see what stands above\n").ToString();
        }

        text.Append(text.Length > 0 ? "\n" : "").Append($"{plan.Order}: {CountText.Of(figures.Units, "unit")} in {CountText.Of(plan.Bins.Count, "bin")} ({figures.BinsChosenFor}{(figures.BinsProved ? ", proved" : "")})\n");
        foreach (IGrouping<int, PlannedBin> printer in plan.Bins.GroupBy(bin => bin.Printer).OrderBy(group => group.Key))
        {
            text.Append($"  {Stem(printer.First().Name)}: {CountText.Of(printer.Count(), "bin")}, {CountText.Of(printer.Sum(bin => bin.Units.Count), "unit")}, up to {printer.Max(bin => bin.Units.Count)} a bin, first {Time(printer.Min(bin => bin.Start))}, last printed {Time(printer.Max(bin => bin.PrintEnd))}\n");
        }

        text.Append($"Done {Time(figures.Finish)}: {(figures.Optimal ? "optimal, no plan with these bins is done earlier" : $"feasible; with these bins no plan is done before {Time(figures.FinishBound)}")}");
        text.Append(figures.LateUnits > 0 ? $"; {CountText.Of(figures.LateUnits, "unit")} late, at least {figures.LateBound} in any plan with these bins\n" : "; no unit is late\n");
        text.Append($"Set before dig-out: up to {figures.LongestSet.TotalHours:0.#} h, the later of the stated time and the strength to lift.\n");
        text.Append($"Printed in 24 h: {figures.FullPaceKilograms / 1000.0:0.0} t of units without a pause; at most {figures.BusiestDayKilograms / 1000.0:0.0} t by this plan.\n");
        text.Append($"Mix: {plan.Bins.Sum(bin => bin.Mix.Kilograms) / 1000.0:0.0} t spread, {figures.UsedUpKilograms / 1000.0:0.0} t used up; the rest is spread again.\n");
        text.Append($"Compile in {CountText.Of(figures.Tasks.Tasks, "task")}: at most {Math.Ceiling(figures.Tasks.SecondsATask / 60.0):0} min and {figures.Tasks.MegabytesATask} MB each with one thread.\n");
        return text.Append($"Plan: {folder}\n").ToString();
    }

    private static string Stem(string bin) => bin[..bin.LastIndexOf('-')];

    private static string Time(DateTime time) => time.ToString("ddd yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
