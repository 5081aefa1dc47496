using Dewstone.Compute.Seabed;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Cli.Rendering;

/// <summary>How a unit stands at its site, and at others, in words.</summary>
internal static class SeaText
{
    /// <summary>The words.</summary>
    /// <param name="own">At the job's own site; null when it has none.</param>
    /// <param name="elsewhere">At the others asked for.</param>
    /// <returns>A line for each site; none without any.</returns>
    public static IEnumerable<string> Of(StabilityReport? own, IReadOnlyList<SeabedResult> elsewhere)
    {
        if (own is not null)
        {
            yield return Line(own);
        }

        foreach (SeabedResult other in elsewhere)
        {
            string verdict = other.Requirements.Any(requirement => !requirement.Met) ? " (would be held there)" : "";
            yield return other.Report is { } report ? Line(report) + verdict : $"not judged: {other.Findings[0].Message}";
            foreach (Diagnostic finding in other.Findings.Where(finding => finding.Severity != Severity.Note))
            {
                yield return $"  {finding.Code}: {finding.Message}";
            }
        }
    }

    private static string Line(StabilityReport r)
    {
        string bearing = r.Bearing is { } foot ? $", bearing {Factor(foot.Factor)}" : "";
        string least = r.LeastSaturatedKilograms is { } kilograms ? $"stands from {kilograms:0} kg on" : "no mass of this shape stands";
        return $"{r.Site}: factors of safety sliding {Factor(r.Sliding)}, overturning {Factor(r.Overturning)}{bearing} (worst heading); {r.SaturatedKilograms:0} kg with full pores, {least}; best heading {r.SafeHeadingDegrees:0} deg";
    }

    private static string Factor(double factor) => factor >= StabilityReport.MostFactor ? $"above {StabilityReport.MostFactor:0}" : $"{factor:0.00}";
}
