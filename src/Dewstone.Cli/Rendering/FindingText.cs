using System.Text;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Cli.Rendering;

/// <summary>Findings as text for people and editors: <c>file:line:column: level CODE: message</c>, then the remedy on an indented line.</summary>
internal static class FindingText
{
    /// <summary>One finding.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="colour">Whether to colour the level.</param>
    /// <returns>Two lines or more, each ending with a line feed.</returns>
    public static string Of(Diagnostic finding, bool colour)
    {
        StringBuilder text = new();
        text.Append(Place(finding.Location));
        string level = ExplainPage.Word(finding.Severity);
        text.Append(colour ? Paint(level, finding.Severity) : level);
        text.Append(' ').Append(finding.Code).Append(": ").Append(PlainText.Of(finding.Message)).Append('\n');
        text.Append("    ").Append(PlainText.Of(finding.Remedy)).Append('\n');
        foreach (RelatedPlace related in finding.Related)
        {
            text.Append("    ").Append(Place(related.Location)).Append(PlainText.Of(related.Remark)).Append('\n');
        }

        if (finding.AcceptedBecause is { } reason)
        {
            text.Append("    released: ").Append(PlainText.Of(reason)).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>All findings, one after another.</summary>
    /// <param name="findings">The findings.</param>
    /// <param name="colour">Whether to colour the levels.</param>
    /// <param name="quiet">Leave out notes.</param>
    /// <returns>Lines, each ending with a line feed; empty when there is nothing to tell.</returns>
    public static string Of(IEnumerable<Diagnostic> findings, bool colour, bool quiet) =>
        string.Concat(findings.Where(f => !quiet || f.Severity != Severity.Note).Select(f => Of(f, colour)));

    private static string Place(SourceLocation? location) => location switch
    {
        null => "",
        { Line: 0 } => $"{PlainText.Of(location.File)}: ",
        { Column: 0 } => $"{PlainText.Of(location.File)}:{location.Line}: ",
        _ => $"{PlainText.Of(location.File)}:{location.Line}:{location.Column}: ",
    };

    // Bold red, yellow-brown and plain: told apart without colour by the word itself.
    private static string Paint(string word, Severity severity) => severity switch
    {
        Severity.Error => $"\u001b[1;31m{word}\u001b[0m",
        Severity.Warning => $"\u001b[33m{word}\u001b[0m",
        _ => word,
    };
}
