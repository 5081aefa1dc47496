using System.Text;
using Dewstone.Jobs.Comparison;

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
        text.Append($"Design {Code(difference.Old.DesignFingerprint)} -> {Code(difference.New.DesignFingerprint)}, job {Code(difference.Old.JobFingerprint)} -> {Code(difference.New.JobFingerprint)}\n\n");
        Table(text, "Description", ["key", "old", "new"], difference.Description.Select(c => new[] { Code(c.Key), Cell(c.Old ?? "-"), Cell(c.New ?? "-") }));
        if (difference.Moved)
        {
            text.Append("The unit stands elsewhere in the bin.\n\n");
        }

        if (difference.Target.Slabs.Count + difference.Predicted.Slabs.Count > 0)
        {
            text.Append($"**Wanted solid**: {DifferenceWords.Solid(difference.Target)}\n\n**Predicted solid**: {DifferenceWords.Solid(difference.Predicted)}\n\n");
        }

        if (difference.Doses is { Positions.Count: > 0 } doses)
        {
            text.Append($"**Doses**: {DifferenceWords.Doses(doses)}\n\n");
        }

        Bullets(text, "Requirements", difference.Requirements.Select(DifferenceWords.Requirement));
        Bullets(text, "Findings", difference.Findings.Select(DifferenceWords.Finding));
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

    private static void Bullets(StringBuilder text, string title, IEnumerable<string> lines)
    {
        string[] all = [.. lines];
        if (all.Length > 0)
        {
            text.Append($"**{title}**\n\n").Append(string.Concat(all.Take(MostRows).Select(line => $"- {Cell(line)}\n"))).Append('\n');
        }
    }

    // What users wrote must not become markup; a code span ends at the first back-quote, so there are none inside one.
    private static string Cell(string text) =>
        string.Concat(text.Select(c => c is '|' or '<' or '>' or '*' or '_' or '[' or ']' or '`' or '\\' or '#' or '@' ? $"\\{c}" : c is '\n' or '\r' ? " " : c.ToString()));

    private static string Code(string text) => $"`{text.Replace('`', '\'').Replace('|', '/')}`";
}
