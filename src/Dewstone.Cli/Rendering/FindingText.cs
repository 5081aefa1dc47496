using System.Runtime.InteropServices;
using System.Text;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Cli.Rendering;

/// <summary>Findings as text for people and editors: <c>file:line:column: level CODE: message</c>, then the remedy on an indented line.</summary>
internal static class FindingText
{
    /// <summary>Most findings of one code that are told of one file: a column in the wrong unit is wrong in every row.</summary>
    public const int MostAlike = 20;

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

    /// <summary>Findings one after another; of many alike the first, and then how many are left out.</summary>
    /// <param name="findings">The findings.</param>
    /// <param name="colour">Whether to colour the levels.</param>
    /// <param name="quiet">Leave out notes.</param>
    /// <returns>Lines, each ending with a line feed; empty when there is nothing to tell.</returns>
    public static string Of(IEnumerable<Diagnostic> findings, bool colour, bool quiet)
    {
        StringBuilder text = new();
        Dictionary<(Severity, string, string?), int> alike = [];
        foreach (Diagnostic finding in findings.Where(f => !quiet || f.Severity != Severity.Note))
        {
            int seen = CollectionsMarshal.GetValueRefOrAddDefault(alike, (finding.Severity, finding.Code, finding.Location?.File), out _)++;
            text.Append(seen < MostAlike ? Of(finding, colour) : "");
        }

        foreach (((Severity severity, string code, string? file), int count) in alike.Where(kind => kind.Value > MostAlike))
        {
            string where = file is null ? "" : $"{PlainText.Of(file)}: ";
            text.Append($"{where}{count - MostAlike} more like the {MostAlike} of {ExplainPage.Word(severity)} {code} above; --json lists all\n");
        }

        return text.ToString();
    }

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
