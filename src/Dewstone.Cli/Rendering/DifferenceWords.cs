using Dewstone.Jobs.Comparison;
using Dewstone.Reading.Job;

namespace Dewstone.Cli.Rendering;

/// <summary>Phrases that the text and the Markdown of <c>diff</c> share.</summary>
internal static class DifferenceWords
{
    public static string Verdict(JobDifference difference) => (difference.Differs, difference.New.Held, difference.Old.Held) switch
    {
        (false, _, _) when Nothing(difference) => "no difference",
        (false, _, _) => "no difference beyond the tolerance",
        (true, true, false) => "different, and the newer is HELD back from printing",
        (true, false, true) => "different, and the newer can be printed, which the older could not",
        _ => "different",
    };

    public static string Solid(SolidChange change) =>
        $"{change.AddedLitres:0.000} L added, {change.RemovedLitres:0.000} L removed" +
        (change.Low is { } low && change.High is { } high
            ? $", between x {low.X * 1000.0:0} and {high.X * 1000.0:0}, y {low.Y * 1000.0:0} and {high.Y * 1000.0:0}, z {low.Z * 1000.0:0} and {high.Z * 1000.0:0} mm"
            : "");

    public static string Doses(DoseChanges doses) =>
        $"{doses.Positions.Count} positions in {doses.Layers} layers, water {doses.OldMillilitres / 1000.0:0.000} -> {doses.NewMillilitres / 1000.0:0.000} L, largest change {Math.Abs(doses.Positions[0].NewMillilitres - doses.Positions[0].OldMillilitres):0.00} mL";

    public static string Requirement(RequirementChange change)
    {
        ClaimedRequirement any = change.New ?? change.Old!.Value;
        string verdict = Verdict(change);
        string Value(double value) => Quantity(value, any.Unit);
        return (change is { Old: { } old, New: { } now }
            ? $"{Name(any)}: {Value(old.Value)} -> {Value(now.Value)}, margin {Value(old.Margin)} -> {Value(now.Margin)}"
            : $"{Name(any)}: {Value(any.Value)}, margin {Value(any.Margin)}") + (verdict.Length > 0 ? $", {verdict}" : "");
    }

    /// <summary>What is asked, and of what.</summary>
    public static string Name(ClaimedRequirement requirement) =>
        requirement.Feature.Length == 0 ? requirement.Quantity : $"{requirement.Quantity} of {requirement.Feature}";

    /// <summary>How the verdict changed; empty when it did not.</summary>
    public static string Verdict(RequirementChange change) => (change.Old?.Met, change.New?.Met) switch
    {
        (true, false) => "NO LONGER MET",
        (false, true) => "now met",
        (null, { } met) => met ? "newly asked, met" : "newly asked, NOT MET",
        ({ }, null) => "asked no more",
        _ => "",
    };

    /// <summary>A requirement's figure with its unit, metres as millimetres.</summary>
    public static string Quantity(double value, string unit) => unit switch
    {
        "1" => $"{value:0.####}",
        "m" => $"{value * 1000.0:0.##} mm",
        _ => $"{value:0.##} {unit}",
    };

    public static string Finding(FindingChange change) => change switch
    {
        { Old: null, New: { } now } => $"new {now.Level} {now.Code}: {now.Message}",
        { Old: { } old, New: null } => $"gone {old.Level} {old.Code}: {old.Message}",
        _ => $"{change.Kind} {change.New!.Level} {change.New.Code}: {change.New.Message} (was: {change.Old!.Message})",
    };

    public static string Figure(double? value) => value is { } number ? number.ToString("0.######") : "none";

    private static bool Nothing(JobDifference d) =>
        d.Description.Count + d.Target.Slabs.Count + d.Predicted.Slabs.Count + d.Findings.Count + d.Requirements.Count + d.Figures.Count == 0 && d.Doses is null or { Positions.Count: 0 };
}
