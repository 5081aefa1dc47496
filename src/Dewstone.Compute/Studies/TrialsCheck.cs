using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Studies;

/// <summary>Says which requirements the job meets as computed, but may well miss when its inputs are not as assumed.</summary>
public static class TrialsCheck
{
    /// <summary>Share of trials that the interval's lower end must reach, 1; chosen, no source.</summary>
    public const double SureShare = 0.90;

    /// <summary>Trials below which even no failure leaves the interval's lower end under <see cref="SureShare"/>.</summary>
    public const int FewestTrials = 35;

    /// <summary>Checks.</summary>
    /// <param name="trials">The trials.</param>
    /// <returns>Finding DW3035 for each such requirement; when all of too few trials met it, none.</returns>
    public static IReadOnlyList<Diagnostic> Check(TrialsReport trials)
    {
        ArgumentNullException.ThrowIfNull(trials);
        return [.. trials.Requirements.Where(r => r.Nominal.Met && r.ShareLow < SureShare && r.Met < trials.Trials).Select(r => Doubtful(r, trials.Trials))];
    }

    private static Diagnostic Doubtful(TrialedRequirement r, int trials)
    {
        string what = r.Nominal.Feature.Length == 0 ? r.Nominal.Quantity : $"{r.Nominal.Quantity} of \"{r.Nominal.Feature}\"";
        string driver = r.Driver is { } most
            ? $"; misses go with {Cause(most)} (rank correlation {most.RankCorrelation:0.00})"
            : "; no single input stands out";
        return LimitFindings.Doubtful.At(
            $"{what}: {r.Met} of {trials} trials meet it, {100.0 * r.ShareLow:0} to {100.0 * r.ShareHigh:0} % of prints with 95 % confidence{driver}",
            r.Driver is null ? "leave more room to the limit, or narrow what is uncertain" : Remedy(r.Driver.Input), r.Nominal.Key);
    }

    private static string Cause(TrialDriver most) => most.Input is TrialSpreads.DriftName or TrialSpreads.RepeatabilityName
        ? $"{(most.RankCorrelation < 0.0 ? "more" : "less")} water by {most.Input}"
        : $"{(most.RankCorrelation < 0.0 ? "high" : "low")} {most.Input}";

    private static string Remedy(string input) => input switch
    {
        "bed temperature" => "measure the bed's temperature on the night, or leave more room to the limit",
        TrialSpreads.DriftName or TrialSpreads.RepeatabilityName => "check and recalibrate the needles before the print, or leave more room to the limit",
        "loose density" => "measure the bed's density on the night and spread more evenly, or leave more room to the limit",
        _ => "calibrate the mix, or leave more room to the limit",
    };
}
