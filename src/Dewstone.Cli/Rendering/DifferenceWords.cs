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
        string name = any.Feature.Length == 0 ? any.Quantity : $"{any.Quantity} of {any.Feature}";
        string verdict = (change.Old?.Met, change.New?.Met) switch
        {
            (true, false) => ", NO LONGER MET",
            (false, true) => ", now met",
            (null, { } met) => met ? ", newly asked, met" : ", newly asked, NOT MET",
            ({ }, null) => ", asked no more",
            _ => "",
        };
        string unit = any.Unit == "1" ? "" : $" {any.Unit}";
        return change is { Old: { } old, New: { } now }
            ? $"{name}: {Figure(old.Value)} -> {Figure(now.Value)}{unit}, margin {Figure(old.Margin)} -> {Figure(now.Margin)}{unit}{verdict}"
            : $"{name}: {Figure(any.Value)}{unit}, margin {Figure(any.Margin)}{unit}{verdict}";
    }

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
