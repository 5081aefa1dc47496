using System.Text;
using Dewstone.Compute.Calibration;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Cli.Rendering;

/// <summary>A calibrated head as text of 80 columns: sums, what to do first, and every needle that is not ok.</summary>
internal static class HeadText
{
    private const int MostAdvice = 10;
    private const int MostNeedles = 40;

    /// <summary>The text.</summary>
    /// <param name="head">The head; null when the data could not be used.</param>
    /// <param name="findings">All findings.</param>
    /// <param name="written">The file written; null for none.</param>
    /// <param name="colour">Whether to colour levels.</param>
    /// <param name="quiet">Leave out notes.</param>
    /// <returns>Plain text.</returns>
    public static string Of(HeadCalibration? head, IReadOnlyList<Diagnostic> findings, string? written, bool colour, bool quiet)
    {
        StringBuilder text = new(FindingText.Of(findings, colour, quiet));

        if (head is null)
        {
            return text.Append("nothing calibrated: mend what stands above\n").ToString();
        }

        int blocked = Count(head, NeedleCondition.Blocked), limited = Count(head, NeedleCondition.Limited);
        text.Append(text.Length > 0 ? "\n" : "").Append($"{head.Needles.Count} needles weighed: {head.Needles.Count - blocked - limited} ok, {limited} limited, {blocked} blocked\n");
        text.Append($"Outliers by Grubbs' two-sided test at {NeedleRules.OutlierLevel:0 %} a needle: {head.Needles.Sum(needle => needle.Outliers.Count)}"
            + $" (about {head.Needles.Count * NeedleRules.OutlierLevel:0.#} by chance alone)\n");
        Table(text, head);
        Advice(text, head);
        if (written is not null)
        {
            text.Append($"\nWrote {written}\n");
        }

        return text.ToString();
    }

    private static int Count(HeadCalibration head, NeedleCondition condition) => head.Needles.Count(needle => needle.State.Condition == condition);

    private static void Table(StringBuilder text, HeadCalibration head)
    {
        NeedleFit[] shown = [.. head.Needles.Count <= MostNeedles ? head.Needles : head.Needles.Where(needle => needle.State.Condition != NeedleCondition.Ok).Take(MostNeedles)];
        if (shown.Length == 0)
        {
            return;
        }

        text.Append("\ncolumn row  n   gain            offset mL       scatter  drift   state\n");
        foreach (NeedleFit needle in shown)
        {
            NeedleState state = needle.State;
            string name = state.Condition switch { NeedleCondition.Blocked => "blocked", NeedleCondition.Limited => "limited", _ => "ok" };
            string gain = state.Condition == NeedleCondition.Blocked ? "-" : $"{state.Gain:0.000}{Half(needle.GainHalfWidth, "0.000")}";
            string offset = state.Condition == NeedleCondition.Blocked || needle.OffsetHalfWidth is null ? "-" : $"{state.OffsetMillilitres:0.00}{Half(needle.OffsetHalfWidth, "0.00")}";
            text.Append($"{state.Column,6} {state.Row,3} {needle.Used,2}   {gain,-15} {offset,-15} {state.Repeatability,7:0.0 %}  {needle.Drift,6:+0.0 %;-0.0 %;0.0 %}  {name}\n");
        }
    }

    private static string Half(double? width, string form) => width is { } half ? $" +-{half.ToString(form)}" : "";

    private static void Advice(StringBuilder text, HeadCalibration head)
    {
        if (head.Advice.Count == 0)
        {
            return;
        }

        text.Append("\nFirst to do\n");
        foreach (NeedleAdvice advice in head.Advice.Take(MostAdvice))
        {
            text.Append($"  {(advice.Clean ? "clean" : "weigh again")} column {advice.Column}, row {advice.Row}: {advice.Reason}\n");
        }

        if (head.Advice.Count > MostAdvice)
        {
            text.Append($"  and {head.Advice.Count - MostAdvice} more, see --json\n");
        }
    }
}
