using System.Text;
using Dewstone.Cli.Commands;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Cli.Rendering;

/// <summary>What <c>compile</c> and <c>check</c> say of a unit: findings, what was asked against what will set, what to load, the verdict.</summary>
internal static class OutcomeText
{
    /// <summary>The text of one unit.</summary>
    /// <param name="outcome">What came of it.</param>
    /// <param name="colour">Whether to colour levels.</param>
    /// <param name="quiet">Leave out notes.</param>
    /// <returns>Plain text.</returns>
    public static string Of(UnitOutcome outcome, bool colour, bool quiet)
    {
        StringBuilder text = new(FindingText.Of(outcome.Findings, colour, quiet));

        if (outcome.Job is { } job)
        {
            if (text.Length > 0)
            {
                text.Append('\n');
            }

            Requirements(text, job);
            Load(text, job);
            foreach (string line in SeaText.Of(job.Sea, outcome.Elsewhere))
            {
                WordLine.Add(text, "sea", line);
            }

            foreach (string line in job.Trials is { } trials ? TrialsText.Of(trials) : [])
            {
                WordLine.Add(text, "trials", line);
            }
        }

        text.Append($"{PlainText.Of(outcome.Name)}: {Verdict(outcome)}\n");
        return text.ToString();
    }

    /// <summary>A line for each unit that is not good, by its file, and one line over all.</summary>
    /// <param name="outcomes">What came of them.</param>
    /// <returns>Plain text.</returns>
    public static string Summary(IReadOnlyList<UnitOutcome> outcomes)
    {
        int good = outcomes.Count(o => o.ExitCode == ExitCode.Done), held = outcomes.Count(o => o.Job is { Held: true });
        int errors = outcomes.Sum(o => o.Count(Severity.Error)), warnings = outcomes.Sum(o => o.Count(Severity.Warning));
        string rest = outcomes.Count - good - held > 0 ? $", {outcomes.Count - good - held} with input at fault or not written" : "";
        string bad = string.Concat(outcomes.Where(o => o.ExitCode != ExitCode.Done).Select(o => $"{PlainText.Of(o.File)}: {Verdict(o)}\n"));
        return $"{bad}{outcomes.Count} units: {good} good, {held} held{rest} ({CountText.Of(errors, "error")}, {CountText.Of(warnings, "warning")})\n";
    }

    private static string Verdict(UnitOutcome outcome)
    {
        string counts = $"{CountText.Of(outcome.Count(Severity.Error), "error")}, {CountText.Of(outcome.Count(Severity.Warning), "warning")}, {CountText.Of(outcome.Count(Severity.Note), "note")}";
        string what = outcome switch
        {
            { Job: null } when outcome.Count(Severity.Error) > 0 => "stopped before wetting",
            { Job: null } => "drawing fits mix and printer",
            { Job.Held: true, Folder: not null } => $"HELD, nothing to print: {PlainText.Of(outcome.Folder)}",
            { Job.Held: true } => "would be held",
            { Folder: not null } => $"ready to print: {PlainText.Of(outcome.Folder)}",
            _ when outcome.ExitCode != ExitCode.Done => "not written",
            _ => "fit to print",
        };
        return $"{what} ({counts})";
    }

    private static void Requirements(StringBuilder text, CompiledJob job)
    {
        foreach (RequirementResult r in job.Requirements)
        {
            text.Append($"  {WordLine.Verdict(r),-8} {WordLine.Of(r)}\n");
        }
    }

    private static void Load(StringBuilder text, CompiledJob job)
    {
        Estimate e = job.Estimate;
        int doses = job.Doses.CentiMillilitres.Count(d => d > 0);
        WordLine.Add(text, "unit", $"{Round(e.LiftKilograms)} kg on the hook, {Round(job.Solid.HardenedCubicMetres * 1000.0)} L of concrete, mean water/cement {job.Solid.MeanWaterCement:0.000}");
        WordLine.Add(text, "mix", $"{Round(e.SpreadKilograms)} kg to spread: {Round(e.HardenedDryKilograms)} kg harden, {Round(e.ReusableKilograms)} kg can be used again, {Round(e.LostKilograms)} kg lost");
        WordLine.Add(text, "water", $"{e.WaterCubicMetres * 1000.0:0.0} L in {doses} doses over {job.Lattice.Layers} layers, and {e.FlushCubicMetres * 1000.0:0.0} L to flush");
        WordLine.Add(text, "place", PlaceText.Of(job));
        foreach (string line in DosingText.Of(job.Dosing))
        {
            WordLine.Add(text, "doses", line);
        }

        if (job.Strength is { } strength)
        {
            WordLine.Add(text, "strength", StrengthText.Strength(strength));
            WordLine.Add(text, "lifting", StrengthText.Lifting(strength));
        }

        WordLine.Add(text, "time", $"{Minutes(e.PrintSeconds)} printing after {Minutes(e.SetupSeconds)} of setup");
        WordLine.Add(text, "tonight", NightText.Of(job.Description));
        WordLine.Add(text, "carbon and cost", $"{Round(e.CarbonKilograms)} kg CO2, {e.Cost:0.00} {e.Currency} (materials used up)");
    }

    private static string Round(double value) => value.ToString(value < 10.0 ? "0.0" : "0");

    private static string Minutes(double seconds)
    {
        long minutes = (long)Math.Round(seconds / 60.0);
        return minutes < 60 ? $"{minutes} min" : $"{minutes / 60} h {minutes % 60} min";
    }
}
