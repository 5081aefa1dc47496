using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Measurements;

namespace Dewstone.Compute.Calibration;

/// <summary>Says in words why a needle is not ok and what to do first.</summary>
internal static class NeedleNotes
{
    /// <summary>Why a needle is not ok.</summary>
    /// <param name="blocked">Whether it is blocked.</param>
    /// <param name="used">Good readings.</param>
    /// <param name="deviation">Delivered over asked at the middle dose, less 1.</param>
    /// <param name="repeatability">One standard deviation as a share; null when it is not known.</param>
    /// <param name="drift">Change since the last check, a share; null without one.</param>
    /// <returns>Phrases.</returns>
    public static IReadOnlyList<string> Reasons(bool blocked, int used, double deviation, double? repeatability, double? drift)
    {
        List<string> reasons = [];
        if (blocked)
        {
            return [$"gives {1.0 + deviation:0 %} of what is asked"];
        }

        if (used < NeedleRules.FewestReadings)
        {
            reasons.Add($"has {used} good reading{(used == 1 ? "" : "s")}, fewer than {NeedleRules.FewestReadings}");
        }

        if (Math.Abs(deviation) > NeedleRules.MostDeviation)
        {
            reasons.Add($"gives {Signed(deviation)} at its middle dose");
        }

        if (repeatability > NeedleRules.MostRepeatability)
        {
            reasons.Add($"scatters by {repeatability:0.0 %}");
        }

        if (drift is { } moved && Math.Abs(moved) > NeedleRules.MostDrift)
        {
            reasons.Add($"has moved by {Signed(moved)} since the last check");
        }

        return reasons;
    }

    /// <summary>Findings of a needle.</summary>
    /// <param name="fit">The needle.</param>
    /// <param name="file">File of its readings.</param>
    /// <param name="line">Line of its first reading.</param>
    public static IEnumerable<Diagnostic> Findings(NeedleFit fit, string file, int line)
    {
        string needle = $"needle in column {fit.State.Column}, row {fit.State.Row}";
        foreach (NeedleReading outlier in fit.Outliers)
        {
            yield return MeasurementFindings.Outlier.At(
                $"{needle}: {outlier.WeighedGrams} g for {outlier.AskedMillilitres} mL asked is an outlier and was left out", "weigh it again",
                location: new SourceLocation(file, outlier.Line, 1));
        }

        if (fit.Reasons.Count > 0)
        {
            bool blocked = fit.State.Condition == NeedleCondition.Blocked;
            yield return (blocked ? CalibrationFindings.Blocked : CalibrationFindings.Limited).At(
                $"{needle} is {(blocked ? "blocked" : "limited")}: it {string.Join(" and ", fit.Reasons)}", "clean it and weigh it again",
                location: new SourceLocation(file, line, 1));
        }
        else if (fit.HasDrifted)
        {
            yield return CalibrationFindings.Drifted.At(
                $"{needle} gives {Signed(fit.Drift!.Value)} against the last check", "nothing to do tonight; the new figures hold",
                location: new SourceLocation(file, line, 1));
        }
    }

    /// <summary>What to clean or weigh again, most urgent first: blocked; giving less, or less than before; scattering; then readings in doubt.</summary>
    /// <param name="fits">The needles.</param>
    public static IReadOnlyList<NeedleAdvice> Advice(IReadOnlyList<NeedleFit> fits) =>
        [.. fits.Select(fit => (Fit: fit, Urgency: Urgency(fit))).Where(one => one.Urgency > 0.0)
            .OrderByDescending(one => one.Urgency).ThenBy(one => one.Fit.State.Row).ThenBy(one => one.Fit.State.Column)
            .Select(one => new NeedleAdvice(one.Fit.State.Column, one.Fit.State.Row, NeedsCleaning(one.Fit), Reason(one.Fit)))];

    private static bool NeedsCleaning(NeedleFit fit) =>
        fit.State.Condition == NeedleCondition.Blocked || fit.Deviation < -NeedleRules.MostDeviation || fit.Drift < -NeedleRules.MostDrift
        || fit.State.Repeatability > NeedleRules.MostRepeatability;

    // Whole numbers order the kinds, fractions the needles of a kind.
    private static double Urgency(NeedleFit fit)
    {
        double amount = Math.Min(0.99, Math.Max(Math.Abs(fit.Deviation), Math.Max(Math.Abs(fit.Drift ?? 0.0), fit.State.Repeatability ?? 0.0)));
        return fit.State.Condition == NeedleCondition.Blocked ? 4.0 + amount
            : NeedsCleaning(fit) ? 3.0 + amount
            : fit.State.Condition == NeedleCondition.Limited ? 2.0 + amount
            : fit.Outliers.Count > 0 ? 1.0 + amount : 0.0;
    }

    private static string Reason(NeedleFit fit) =>
        fit.Reasons.Count > 0 ? string.Join(", ", fit.Reasons) : $"{fit.Outliers.Count} reading{(fit.Outliers.Count == 1 ? " is an outlier" : "s are outliers")}";

    private static string Signed(double share) => $"{share:+0.0 %;-0.0 %}";
}
