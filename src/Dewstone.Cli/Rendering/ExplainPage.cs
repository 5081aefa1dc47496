using System.Text;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Cli.Rendering;

/// <summary>Pages of <c>dewstone explain</c>.</summary>
internal static class ExplainPage
{
    private const int Width = 90;

    /// <summary>The page of one kind of finding.</summary>
    /// <param name="kind">Entry of the catalogue.</param>
    /// <returns>Plain text, wrapped.</returns>
    public static string Of(FindingKind kind)
    {
        StringBuilder page = new();
        page.Append(kind.Code).Append(' ').Append(Word(kind.Severity)).Append(": ").Append(kind.Title).Append("\n\n");
        Section(page, "What it means", kind.What);
        Section(page, "Why it matters", kind.Why);
        Section(page, "What to do", kind.Cure);
        if (kind.Example.Length > 0)
        {
            page.Append("Example\n");
            foreach (string line in kind.Example.Split('\n'))
            {
                page.Append("    ").Append(line).Append('\n');
            }

            page.Append('\n');
        }

        if (kind.Source.Length > 0)
        {
            Section(page, "Source", kind.Source);
        }

        return page.ToString().TrimEnd('\n') + "\n";
    }

    /// <summary>All codes, a line each.</summary>
    /// <returns>Plain text.</returns>
    public static string List()
    {
        StringBuilder list = new();
        foreach (FindingKind kind in DiagnosticCatalogue.All)
        {
            list.Append($"{kind.Code}  {Word(kind.Severity),-7}  {kind.Title}\n");
        }

        return list.ToString();
    }

    /// <summary>The word for a level.</summary>
    /// <param name="severity">Level.</param>
    /// <returns>error, warning or note.</returns>
    public static string Word(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "note",
    };

    private static void Section(StringBuilder page, string heading, string text)
    {
        page.Append(heading).Append('\n');
        int column = 0;
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (column > 0 && column + 1 + word.Length > Width)
            {
                page.Append('\n');
                column = 0;
            }

            page.Append(column == 0 ? "  " : " ").Append(word);
            column += word.Length + (column == 0 ? 2 : 1);
        }

        page.Append("\n\n");
    }
}
