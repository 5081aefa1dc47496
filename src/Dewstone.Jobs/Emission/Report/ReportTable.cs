namespace Dewstone.Jobs.Emission.Report;

/// <summary>Writes tables: each with a caption and headers; on a narrow page the rows of a wide one become short lists that repeat them.</summary>
internal static class ReportTable
{
    // A longer table may run over onto the next page of paper.
    private const int MostRowsOnePage = 9;

    /// <summary>Writes a table.</summary>
    /// <param name="html">The page.</param>
    /// <param name="caption">What it shows.</param>
    /// <param name="heads">Headers; one that begins with <c>#</c> heads figures, which stand at the right.</param>
    /// <param name="rows">Texts of each row; the first names the row.</param>
    public static void Write(HtmlWriter html, string caption, string[] heads, IEnumerable<string[]> rows)
    {
        string[][] all = [.. rows];
        // Names with figures stay a table on the narrowest page; texts do not fit beside one another there.
        bool stacks = heads.Length > 3 || !heads[^1].StartsWith('#');
        html.Add($"""<table class="{(stacks ? "stack" : "plain")}{(all.Length > MostRowsOnePage ? " long" : "")}"><caption>{caption}</caption><thead><tr>""");
        foreach (string head in heads)
        {
            html.Add($"""<th scope="col" class="{Class(head)}">{Name(head)}</th>""");
        }

        html.Add($"</tr></thead><tbody>");
        foreach (string[] row in all)
        {
            html.Add($"<tr>");
            html.Add($"""<th scope="row">{row[0]}</th>""");
            for (int i = 1; i < row.Length; i++)
            {
                html.Add($"""<td class="{Class(heads[i])}" data-head="{Name(heads[i])}">{row[i]}</td>""");
            }

            html.Add($"</tr>");
        }

        html.Add($"</tbody></table>");
    }

    /// <summary>Writes a list of names with what belongs to them; what is empty is left out.</summary>
    /// <param name="html">The page.</param>
    /// <param name="pairs">Name and text.</param>
    public static void Pairs(HtmlWriter html, params ReadOnlySpan<(string Name, string Text)> pairs)
    {
        html.Add($"""<dl class="pairs">""");
        foreach ((string name, string text) in pairs)
        {
            if (text.Length > 0)
            {
                html.Add($"<div><dt>{name}</dt><dd>{text}</dd></div>");
            }
        }

        html.Add($"</dl>");
    }

    private static string Class(string head) => head.StartsWith('#') ? "figure" : "text";

    private static string Name(string head) => head.TrimStart('#');
}
