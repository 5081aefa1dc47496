using System.Text;
using Dewstone.Cli.Commands;
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
        StringBuilder text = new(FindingText.Of(outcome.Findings, colour, quiet));

        if (outcome.Result is not { Job: { } job, Joint: { } joint } result)
        {
            return text.Append($"{outcome.Job}: not resumed\n").ToString();
        }

        WordLine.Add(text, "joint", joint.AgeSeconds <= 0.0 ? "none: no dose was given before the stop" : joint.LowerLayer == joint.UpperLayer
            ? $"layer {joint.LowerLayer} in two goes, {Minutes(joint.AgeSeconds)} apart, window {Minutes(joint.WindowSeconds)}"
            : $"layer {joint.LowerLayer} is {Minutes(joint.AgeSeconds)} old when layer {joint.UpperLayer} gets its first dose, window {Minutes(joint.WindowSeconds)}");
        WordLine.Add(text, "unset there", $"{joint.UnsetCubicMetres * 1000.0:0.00} L of the wanted solid, {joint.UnsetInOneGoCubicMetres * 1000.0:0.00} L in one go");
        WordLine.Add(text, "shape match", $"{joint.ShapeMatch:0.000}, {joint.ShapeMatchInOneGo:0.000} in one go");
        WordLine.Add(text, "doses", result.Rest switch
        {
            null => "as tabled: nothing has changed",
            { Redosed: true } rest => $"found anew in {rest.Solves} solves",
            _ => "as tabled: they still serve",
        });
        foreach (RequirementResult r in job.Requirements)
        {
            WordLine.Add(text, WordLine.Verdict(r), WordLine.Of(r));
        }

        string verdict = job.Held ? "SCRAP, nothing to print" : "go on";
        return text.Append($"{job.Description.Unit.Name}: {verdict}: {outcome.Folder ?? "not written"}\n").ToString();
    }

    private static string Minutes(double seconds) => $"{seconds / 60.0:0.#} min";
}
