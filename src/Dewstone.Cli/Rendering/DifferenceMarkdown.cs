using System.Text;
using Dewstone.Jobs.Comparison;
using Dewstone.Reading.Job;

namespace Dewstone.Cli.Rendering;

/// <summary>What <c>diff --format markdown</c> writes: a comment for a review, the verdict first, long lists folded away.</summary>
internal static class DifferenceMarkdown
{
    private const int MostRows = 60;

    /// <summary>The comment.</summary>
    /// <param name="difference">What differs.</param>
    /// <returns>Markdown with tables.</returns>
    public static string Of(JobDifference difference)
    {
        StringBuilder text = new();
        text.Append($"### {Cell(difference.New.Description.Unit.Name)}: {DifferenceWords.Verdict(difference)}\n\n");
        text.Append($"Design {Name(difference.Old.DesignFingerprint)} -> {Name(difference.New.DesignFingerprint)}, job {Name(difference.Old.JobFingerprint)} -> {Name(difference.New.JobFingerprint)}\n\n");
        Table(text, "Description", ["key", "old", "new"], difference.Description.Select(c => new[] { Code(c.Key), Cell(c.Old ?? "-"), Cell(c.New ?? "-") }));
        Table(text, "Requirements", ["requirement", "asked", "old", "new", "margin", "verdict"], difference.Requirements.Select(Requirement));
        FindingChange[] weighty = [.. difference.Findings.Where(f => f.Kind != "changed").OrderBy(Weight)], reworded = [.. difference.Findings.Where(f => f.Kind == "changed")];
        Bullets(text, "**Findings**", weighty, "");
        if (difference.Target.Slabs.Count + difference.Predicted.Slabs.Count > 0)
        {
            text.Append($"**Wanted solid**: {DifferenceWords.Solid(difference.Target)}\n\n**Predicted solid**: {DifferenceWords.Solid(difference.Predicted)}\n\n");
        }

        if (difference.Doses is { Positions.Count: > 0 } doses)
        {
            text.Append($"**Doses**: {DifferenceWords.Doses(doses)}\n\n");
        }

        if (difference.Moved)
        {
            text.Append("The unit stands elsewhere in the bin, so every dose stands elsewhere in the unit; `compile --like` the older job keeps its place.\n\n");
        }

        Bullets(text, "<details><summary>Findings with other figures</summary>", reworded, "</details>\n\n");
        Folded(text, "Predicted solid by height", ["z, mm", "added, L", "removed, L"], difference.Predicted.Slabs.Select(s =>
            new[] { $"{s.FromMetres * 1000.0:0} to {s.ToMetres * 1000.0:0}", $"{s.AddedLitres:0.000}", $"{s.RemovedLitres:0.000}" }));
        Folded(text, "Materials and time", ["figure", "old", "new"], difference.Figures.Select(f => new[] { Code(f.Name), DifferenceWords.Figure(f.Old), DifferenceWords.Figure(f.New) }));
        return text.ToString().TrimEnd('\n') + "\n";
    }

    private static void Table(StringBuilder text, string title, string[] heads, IEnumerable<string[]> rows)
    {
        string[][] all = [.. rows];
        if (all.Length == 0)
        {
            return;
        }

        text.Append($"**{title}**\n\n| {string.Join(" | ", heads)} |\n|{string.Concat(heads.Select(_ => "---|"))}\n");
        foreach (string[] row in all.Take(MostRows))
        {
            text.Append($"| {string.Join(" | ", row)} |\n");
        }

        text.Append(all.Length > MostRows ? $"\nand {all.Length - MostRows} more\n\n" : "\n");
    }

    private static void Folded(StringBuilder text, string title, string[] heads, IEnumerable<string[]> rows)
    {
        StringBuilder table = new();
        Table(table, title, heads, rows);
        if (table.Length > 0)
        {
            text.Append($"<details><summary>{title}</summary>\n\n{table.ToString()[$"**{title}**\n\n".Length..]}</details>\n\n");
        }
    }

    private static void Bullets(StringBuilder text, string head, FindingChange[] findings, string tail)
    {
        if (findings.Length == 0)
        {
            return;
        }

        text.Append($"{head}\n\n");
        foreach (FindingChange change in findings.Take(MostRows))
        {
            ComparedFinding told = change.New ?? change.Old!;
            text.Append($"- **{change.Kind} {told.Level} {told.Code}**: {Cell(told.Message)}\n");
            text.Append(change is { Old: { } old, New: not null } ? $"  <br>was {old.Level}: {Cell(old.Message)}\n" : "");
        }

        text.Append(findings.Length > MostRows ? $"\nand {findings.Length - MostRows} more\n\n" : "\n").Append(tail);
    }

    private static string[] Requirement(RequirementChange change)
    {
        ClaimedRequirement any = change.New ?? change.Old!.Value;
        string Value(double? value) => value is { } number ? DifferenceWords.Quantity(number, any.Unit) : "-";
        string verdict = DifferenceWords.Verdict(change);
        return
        [
            Cell(DifferenceWords.Name(any)), Cell($"{any.Op} {Value(any.Limit)}"), Value(change.Old?.Value), Value(change.New?.Value), Value(change.New?.Margin),
            verdict.Length > 0 ? verdict : any.Met ? "met" : "NOT MET",
        ];
    }

    // What stops a print comes first, what is gone last.
    private static int Weight(FindingChange change) => (change.Kind is "gone" or "better" ? 3 : 0) + ((change.New ?? change.Old!).Level switch { "error" => 0, "warning" => 1, _ => 2 });

    // What users wrote must not become markup; a code span ends at the first back-quote, so there are none inside one.
    private static string Cell(string text) =>
        string.Concat(text.Select(c => c is '|' or '<' or '>' or '*' or '_' or '[' or ']' or '`' or '\\' or '#' or '@' ? $"\\{c}" : c is '\n' or '\r' ? " " : c.ToString()));

    private static string Name(string fingerprint) => Code(VerificationText.Grouped(fingerprint));

    private static string Code(string text) => $"`{text.Replace('`', '\'').Replace('|', '/')}`";
}
