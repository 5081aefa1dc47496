using System.Text;
using Dewstone.Cli.Commands;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Cli.Rendering;

/// <summary>What <c>resume</c> says: findings, what the joint does, requirements, go on or scrap.</summary>
internal static class ResumeText
{
    /// <summary>The text.</summary>
    /// <param name="outcome">What came of it.</param>
    /// <param name="colour">Whether to colour levels.</param>
    /// <param name="quiet">Leave out notes.</param>
    /// <returns>Plain text.</returns>
    public static string Of(ResumeOutcome outcome, bool colour, bool quiet)
    {
        StringBuilder text = new();
        foreach (Diagnostic finding in outcome.Findings.Where(f => !quiet || f.Severity != Severity.Note))
        {
            text.Append(FindingText.Of(finding, colour));
        }

        if (outcome.Result is not { Job: { } job, Joint: { } joint } result)
        {
            return text.Append($"{outcome.Job}: not resumed\n").ToString();
        }

        Line(text, "joint", joint.AgeSeconds <= 0.0 ? "none: no dose was given before the stop" : joint.LowerLayer == joint.UpperLayer
            ? $"layer {joint.LowerLayer} in two goes, {Minutes(joint.AgeSeconds)} apart, window {Minutes(joint.WindowSeconds)}"
            : $"layer {joint.LowerLayer} is {Minutes(joint.AgeSeconds)} old when layer {joint.UpperLayer} gets its first dose, window {Minutes(joint.WindowSeconds)}");
        Line(text, "unset there", $"{joint.UnsetCubicMetres * 1000.0:0.00} L of the wanted solid, {joint.UnsetInOneGoCubicMetres * 1000.0:0.00} L in one go");
        Line(text, "shape match", $"{joint.ShapeMatch:0.000}, {joint.ShapeMatchInOneGo:0.000} in one go");
        Line(text, "doses", result.Rest switch
        {
            null => "as tabled: nothing has changed",
            { Redosed: true } rest => $"found anew in {rest.Solves} solves",
            _ => "as tabled: they still serve",
        });
        foreach (RequirementResult r in job.Requirements)
        {
            Line(text, r.Met ? "met" : r.AcceptedBecause is null ? "NOT MET" : "released", $"{(r.Feature.Length == 0 ? r.Quantity : $"{r.Quantity} of {r.Feature}")}: {OutcomeText.Figure(r.Value, r.Unit)}, asked {r.Op} {OutcomeText.Figure(r.Limit, r.Unit)}");
        }

        string verdict = job.Held ? "SCRAP, nothing to print" : "go on";
        return text.Append($"{job.Description.Unit.Name}: {verdict}: {outcome.Folder ?? "not written"}\n").ToString();
    }

    private static void Line(StringBuilder text, string word, string what) => text.Append($"  {word,-16} {what}\n");

    private static string Minutes(double seconds) => $"{seconds / 60.0:0.#} min";
}
