using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Report;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Orders.Gathering;

/// <summary>Writes <c>overview.html</c>: an order on one page that needs nothing beside itself and links the report of every bin.</summary>
public static class OverviewPage
{
    /// <summary>Path in the order's folder.</summary>
    public const string Path = "overview.html";

    /// <summary>Path of the plan's drawing in the order's folder.</summary>
    internal const string PlanDrawing = "plan.svg";

    /// <summary>The page.</summary>
    /// <param name="order">The order.</param>
    /// <param name="planDrawing">Drawing of the plan, SVG; null when there is none.</param>
    /// <param name="siteDrawing">Drawing of the site plan, SVG; null when there is none.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(GatheredOrder order, ReadOnlyMemory<byte>? planDrawing, ReadOnlyMemory<byte>? siteDrawing)
    {
        ArgumentNullException.ThrowIfNull(order);
        string style = $"{ReportInks.Rules}{ReportAssets.Read("report.css")}{OverviewAssets.Read("overview.css")}";
        HtmlWriter html = new();
        html.Add($"<!DOCTYPE html>");
        html.Add($"""<html lang="en"><head><meta charset="utf-8" />""");
        html.Add($"""<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; style-src {ReportAssets.Source(style)}" />""");
        html.Add($"""<meta name="viewport" content="width=device-width, initial-scale=1" /><title>{order.Order.Name}: overview</title>""");
        html.Raw($"<style>{style}</style></head>\n");
        html.Add($"""<body class="ready"><main>""");
        OverviewHead.Write(html, order);
        html.Add($"""<nav aria-label="Parts of this page"><ul><li><a href="#nights">Nights</a></li><li><a href="#printing">Printing</a></li><li><a href="#bins">Bins</a></li><li><a href="#units">Units</a></li><li><a href="#sea">At sea</a></li><li><a href="#files">Files</a></li></ul></nav>""");
        html.Add($"""<section id="nights"><h2>Nights and totals</h2>""");
        OverviewTables.Nights(html, order);
        html.Add($"""</section><section id="printing"><h2>Printing</h2>""");
        Picture(html, planDrawing, "Printers, curing and crew over the days of the order", "No drawing of the plan stands in the folder: run dewstone order plan.");
        html.Add($"""</section><section id="bins"><h2>Bins</h2>""");
        OverviewTables.Bins(html, order);
        html.Add($"""</section><section id="units"><h2>Units</h2>""");
        OverviewTables.Units(html, order);
        html.Add($"""</section><section id="sea"><h2>At sea</h2>""");
        Sea(html, order, siteDrawing);
        html.Add($"""</section><section id="files"><h2>Files beside this page</h2>""");
        Files(html, order, planDrawing is not null);
        html.Add($"""</section><footer>{order.Order.Name} · order file {order.Plan.OrderHash[..12]} · dewstone {order.ToolVersion}</footer></main>""");
        html.Raw("</body></html>\n");
        return new EmittedFile(Path, html.ToBytes());
    }

    private static void Sea(HtmlWriter html, GatheredOrder order, ReadOnlyMemory<byte>? drawing)
    {
        if (order.Findings.Count > 0)
        {
            html.Add($"""<ul class="findings">""");
            foreach (Diagnostic finding in order.Findings)
            {
                html.Add($"<li><strong>{finding.Code}</strong> {Level(finding.Severity)}: {finding.Message}; {finding.Remedy}.</li>");
            }

            html.Add($"</ul>");
        }

        if (drawing is not null)
        {
            Picture(html, drawing, "Rows, left to right along their heading, with the mark of each unit", "");
        }

        OverviewTables.Trips(html, order);
    }

    private static string Level(Severity severity) => severity switch { Severity.Error => "error", Severity.Warning => "warning", _ => "note" };

    // A drawing wider than the page is scrolled, not shrunk until its letters are dots.
    private static void Picture(HtmlWriter html, ReadOnlyMemory<byte>? drawing, string what, string without)
    {
        if (drawing is not { } svg)
        {
            html.Add($"<p>{without}</p>");
            return;
        }

        html.Add($"""<div class="wide" tabindex="0" role="group" aria-label="{what}"><img alt="{what}" src="data:image/svg+xml;base64,""");
        html.Base64(svg.Span);
        html.Raw("\" /></div>\n");
    }

    private static void Files(HtmlWriter html, GatheredOrder order, bool planned)
    {
        List<(string Path, string What)> files = [("manifest.json", "every file with its hash, and the totals"), ("labels.html", "a label for each unit"), ("nights.csv", "what each night takes"), ("plan.json", "the plan"), ("units/", "a record of each unit: draws, seeds, figures, requirements, findings")];
        if (order.Standing.Count > 0)
        {
            files.AddRange([("deployment.csv", "where each unit is set down"), ("site-plan.geojson", "the same as a map"), ("site-plan.svg", "the same as a drawing")]);
        }

        if (order.Loads is not null)
        {
            files.Add(("loads.csv", "what the barge carries, trip by trip"));
        }

        if (planned)
        {
            files.AddRange([("plan.csv", "the plan as a table"), (PlanDrawing, "the plan as a drawing"), ("materials.csv", "the plan's forecast of mix by day, with stock and deliveries"), ("crew.ics", "the crew's calendar"), ("layouts/", "each bin from above")]);
        }

        html.Add($"""<ul class="files">""");
        foreach ((string path, string what) in files)
        {
            html.Add($"""<li><a href="{path}">{path}</a>: {what}</li>""");
        }

        html.Add($"</ul>");
    }
}
