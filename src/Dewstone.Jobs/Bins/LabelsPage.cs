using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Report;

namespace Dewstone.Jobs.Bins;

/// <summary>The page that labels stand on, of a bin and of a whole order: eight to a sheet of A4.</summary>
internal static class LabelsPage
{
    /// <summary>Path in the folder of a job or an order.</summary>
    public const string Path = "labels.html";

    /// <summary>What stands before the labels.</summary>
    public const string Begin = "<main>";

    /// <summary>What stands after them.</summary>
    public const string End = "</main>";

    /// <summary>A page of labels.</summary>
    /// <param name="name">Whose they are.</param>
    /// <param name="labels">Writes the labels.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(string name, Action<HtmlWriter> labels)
    {
        string style = ReportAssets.Read("labels.css");
        HtmlWriter html = new();
        html.Add($"<!DOCTYPE html>");
        html.Add($"""<html lang="en"><head><meta charset="utf-8" />""");
        html.Add($"""<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src {ReportAssets.Source(style)}" />""");
        html.Add($"""<meta name="viewport" content="width=device-width, initial-scale=1" /><title>{name}: labels</title>""");
        html.Raw($"<style>{style}</style></head>\n<body>{Begin}");
        labels(html);
        html.Raw($"{End}</body></html>\n");
        return new EmittedFile(Path, html.ToBytes());
    }
}
