using System.Text;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Report;

namespace Dewstone.Orders.Gathering;

/// <summary>Writes <c>labels.html</c> of an order: the labels of its bins on one run of sheets, bin by bin in the order of the plan.</summary>
public static class OrderLabels
{
    /// <summary>Path in the order's folder, and of each bin's labels in its job folder.</summary>
    public const string Path = "labels.html";

    private const string Begin = "<main>", End = "</main>";

    /// <summary>The labels.</summary>
    /// <param name="order">The order.</param>
    /// <param name="labels">Each bin's own labels, as its job holds them.</param>
    /// <returns>The file.</returns>
    /// <exception cref="InvalidDataException">A page is none of ours.</exception>
    public static EmittedFile Emit(GatheredOrder order, IEnumerable<ReadOnlyMemory<byte>> labels)
    {
        ArgumentNullException.ThrowIfNull(order);
        ArgumentNullException.ThrowIfNull(labels);
        string style = ReportAssets.Read("labels.css");
        HtmlWriter html = new();
        html.Add($"<!DOCTYPE html>");
        html.Add($"""<html lang="en"><head><meta charset="utf-8" />""");
        html.Add($"""<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src {ReportAssets.Source(style)}" />""");
        html.Add($"""<meta name="viewport" content="width=device-width, initial-scale=1" /><title>{order.Order.Name}: labels</title>""");
        html.Raw($"<style>{style}</style></head>\n<body>{Begin}");
        foreach (ReadOnlyMemory<byte> page in labels)
        {
            html.Raw(Articles(Encoding.UTF8.GetString(page.Span)));
        }

        html.Raw($"{End}</body></html>\n");
        return new EmittedFile(Path, html.ToBytes());
    }

    // What a bin's page holds was escaped when it was written, and its hash says that it is that page.
    private static string Articles(string page)
    {
        int begin = page.IndexOf(Begin, StringComparison.Ordinal), end = page.LastIndexOf(End, StringComparison.Ordinal);
        return begin >= 0 && end > begin ? page[(begin + Begin.Length)..end] : throw new InvalidDataException($"{Path} of a bin holds no labels.");
    }
}
