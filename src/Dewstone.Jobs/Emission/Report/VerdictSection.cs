using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>What was asked for, how it comes out, and everything found on the way.</summary>
internal static class VerdictSection
{
    /// <summary>Writes the part.</summary>
    /// <param name="html">The page.</param>
    /// <param name="subject">The job.</param>
    public static void Write(HtmlWriter html, ReportSubject subject)
    {
        CompiledJob job = subject.Job;
        html.Add($"<p>{Sentence(job)}</p>");
        if (job.Requirements.Count > 0)
        {
            ReportTable.Write(
                html, "Requirements", ["requirement", "#asked", "#predicted", "#margin", "result", "key and line"],
                job.Requirements.Select(requirement => Row(requirement, subject)));
        }

        if (job.Findings.Count > 0)
        {
            ReportTable.Write(
                html, "Findings", ["code", "level", "what was found", "what to do", "where"],
                job.Findings.OrderByDescending(finding => finding.Severity).Select(finding => (string[])
                [
                    finding.Code, Level(finding), finding.Message, finding.Remedy, Where(finding, subject),
                ]));
        }
    }

    private static string Sentence(CompiledJob job)
    {
        int unmet = job.Requirements.Count(requirement => !requirement.Met && requirement.AcceptedBecause is null);
        string requirements = job.Requirements.Count switch
        {
            0 when job.Description.Bin.Count > 0 => "Requirements were judged of each unit alone; they stand in its own record.",
            0 => "No requirement was judged.",
            _ when unmet == 0 => "Every requirement that was judged is met or released.",
            1 => "The one requirement that was judged is not met.",
            int count => $"{unmet} of {count} requirements that were judged {(unmet == 1 ? "is" : "are")} not met.",
        };
        return job.Held ? $"The job is held. {requirements}" : $"The job is ready to print. {requirements}";
    }

    private static string[] Row(RequirementResult requirement, ReportSubject subject)
    {
        string op = requirement.Op == "<=" ? "at most" : "at least";
        string feature = requirement.Feature.Length > 0 ? $" ({requirement.Feature})" : "";
        string result = requirement switch
        {
            { Met: true } => "met",
            { AcceptedBecause: { } reason } => $"released: {reason}",
            _ => "NOT\u00a0MET",
        };
        return
        [
            $"{requirement.Quantity}{feature}",
            $"{op} {ReportFigures.Quantity(requirement.Limit, requirement.Unit)}",
            ReportFigures.Quantity(requirement.Value, requirement.Unit),
            ReportFigures.Quantity(requirement.Margin, requirement.Unit),
            result,
            Joined(requirement.Key.Path, subject.NameOf(requirement.Location)),
        ];
    }

    private static string Level(Diagnostic finding)
    {
        string level = finding.Severity switch { Severity.Error => "error", Severity.Warning => "warning", _ => "note" };
        return finding.AcceptedBecause is { } reason ? $"{level}, released: {reason}" : level;
    }

    private static string Where(Diagnostic finding, ReportSubject subject)
    {
        string point = finding.Where is { } where ? $"{ReportFigures.Place(where)} in the unit" : "";
        return Joined(subject.NameOf(finding.Location), point);
    }

    private static string Joined(string first, string second) => first.Length == 0 ? second : second.Length == 0 ? first : $"{first}; {second}";
}
