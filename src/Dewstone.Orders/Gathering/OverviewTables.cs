using Dewstone.Jobs.Emission.Report;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Orders.SitePlans;

namespace Dewstone.Orders.Gathering;

/// <summary>The tables of the overview.</summary>
internal static class OverviewTables
{
    // Beyond this a page is no overview; the lists beside it hold all.
    private const int MostRows = 2000;

    /// <summary>What each night takes.</summary>
    public static void Nights(HtmlWriter html, GatheredOrder order) => ReportTable.Write(
        html, "By the night on which a bin is begun", ["night", "#bins", "#units", "#mix", "#water", "#binder", "#CO₂", "#cost", "#printers"],
        [.. order.Nights.Select(night => Row($"{night.Day:ddd yyyy-MM-dd}", night.Totals)), Row("order", order.Totals)]);

    /// <summary>The bins, each with a link to its report.</summary>
    public static void Bins(HtmlWriter html, GatheredOrder order)
    {
        Begin(html, $"Bins, in order of begin{Cut(order.Bins.Count)}", ["bin", "begin", "end", "dig out from", "units", "#mix", "#water", "job fingerprint"]);
        foreach (GatheredBin bin in order.Bins.Take(MostRows))
        {
            html.Add($"""<tr><th scope="row"><a href="bins/{bin.Record.Folder}/report.html">{bin.Planned.Name}</a></th>""");
            Cell(html, "begin", $"{bin.Planned.Start:yyyy-MM-dd HH:mm}");
            Cell(html, "end", $"{bin.Planned.PrintEnd:yyyy-MM-dd HH:mm}");
            Cell(html, "dig out from", $"{bin.Planned.DigStart:yyyy-MM-dd HH:mm}");
            Marks(html, [.. bin.Planned.Units.Select(unit => unit.Mark)]);
            Figure(html, "mix", ReportFigures.Mass(bin.Totals.SpreadKilograms));
            Figure(html, "water", $"{bin.Totals.WaterLitres:0.0} L");
            Whole(html, "job fingerprint", Grouped(bin.JobFingerprint));
            html.Add($"</tr>");
        }

        html.Add($"</tbody></table>");
    }

    /// <summary>The units.</summary>
    public static void Units(HtmlWriter html, GatheredOrder order)
    {
        Dictionary<string, string> folders = order.Bins.SelectMany(bin => bin.Planned.Units.Select(unit => (unit.Mark, bin.Record.Folder))).ToDictionary(pair => pair.Mark, pair => pair.Folder, StringComparer.Ordinal);
        Begin(html, $"Units, in the order of the list{Cut(order.Units.Count)}", ["mark", "kind", "state", "bin", "#on the hook", "#under water", "#lift from", "requirements", "design fingerprint"]);
        foreach (GatheredUnit unit in order.Units.Take(MostRows))
        {
            html.Add($"""<tr><th scope="row">{unit.Ordered.Mark}</th>""");
            Cell(html, "kind", unit.Record.Name);
            Cell(html, "state", State(unit));
            html.Add($"""<td class="text" data-head="bin"><a href="bins/{folders[unit.Ordered.Mark]}/report.html">{unit.Record.Bin}</a></td>""");
            Figure(html, "on the hook", ReportFigures.Mass(unit.AtSea.LiftKilograms));
            Figure(html, "under water", ReportFigures.Mass(unit.AtSea.SubmergedKilograms));
            Figure(html, "lift from", unit.Record.Figures!.LiftDays is { } days ? StrengthWords.Age(days) : "not known");
            Cell(html, "requirements", Requirements(unit.Record.Requirements));
            Whole(html, "design fingerprint", Grouped(unit.Record.DesignFingerprint));
            html.Add($"</tr>");
        }

        html.Add($"</tbody></table>");
    }

    /// <summary>Trips of the barge; nothing when the order names no transport.</summary>
    public static void Trips(HtmlWriter html, GatheredOrder order)
    {
        if (order is not { Loads: { } loads, Order.Transport: { } transport })
        {
            return;
        }

        ReportTable.Write(
            html, $"Trips of the barge: payload {Tonnes(transport.Payload.Kilograms)}, {transport.DeckPlaces} places", ["trip", "#units", "#mass", "#of the payload", "marks"],
            loads.Trips.Select(trip => (string[])
            [
                $"{trip.Number}", $"{trip.Units.Count}", Tonnes(trip.Kilograms), ReportFigures.Share(trip.Kilograms / transport.Payload.Kilograms), Marks(trip),
            ]));
        html.Add($"<p>{(loads.LeastTrips > 1 ? $"Filled heaviest first; no loading needs fewer trips than {loads.LeastTrips}. " : "")}Place on deck, mass and heading of each unit: <a href=\"loads.csv\">loads.csv</a>.</p>");
    }

    /// <summary>A mass of an order.</summary>
    public static string Tonnes(double kilograms) => kilograms < 1000.0 ? ReportFigures.Mass(kilograms) : $"{kilograms / 1000.0:0.0} t";

    /// <summary>Hours of printers.</summary>
    public static string Hours(double seconds) => $"{seconds / 3600.0:0.0} h";

    /// <summary>Cost, in each currency.</summary>
    public static string Cost(BinTotals totals) => string.Join(" + ", totals.Cost.Select(cost => $"{cost.Amount:0} {cost.Currency}"));

    private static string[] Row(string name, BinTotals totals) =>
    [
        name, $"{totals.Bins}", $"{totals.Units}", Tonnes(totals.SpreadKilograms), $"{totals.WaterLitres:0} L", ReportFigures.Mass(totals.BinderKilograms), ReportFigures.Mass(totals.CarbonKilograms),
        Cost(totals), Hours(totals.PrinterSeconds),
    ];

    // Runs of one kind are told by their ends: a trip of forty is not forty marks.
    private static string Marks(BargeTrip trip)
    {
        string[] marks = [.. trip.Units.Select(unit => unit.Unit.Mark).Order(StringComparer.Ordinal)];
        return marks.Length <= 8 ? string.Join(", ", marks) : $"{string.Join(", ", marks.Take(4))} … {string.Join(", ", marks.TakeLast(2))}";
    }

    private static string State(GatheredUnit unit)
    {
        int warnings = unit.Record.Findings.Count(finding => finding.Severity == Severity.Warning);
        string drawn = unit.Record.Draws.Count > 1 ? $"passed in draw {unit.Record.Draws.Count}" : "passed";
        return warnings == 0 ? drawn : $"{drawn}, {warnings} {(warnings == 1 ? "warning" : "warnings")}";
    }

    private static string Requirements(IReadOnlyList<RequirementResult> requirements)
    {
        int met = requirements.Count(requirement => requirement.Met), released = requirements.Count(requirement => !requirement.Met && requirement.AcceptedBecause is not null);
        return requirements.Count == 0 ? "none" : released == 0 ? $"{met} of {requirements.Count} met" : $"{met} of {requirements.Count} met, {released} released";
    }

    private static string Grouped(string fingerprint) => Jobs.Emission.Fingerprint.TryParse(fingerprint, out Jobs.Emission.Fingerprint parsed) ? parsed.Grouped() : fingerprint;

    private static string Cut(int count) => count > MostRows ? $"; the first {MostRows} of {count}" : "";

    private static void Begin(HtmlWriter html, string caption, string[] heads)
    {
        html.Add($"""<table class="stack long"><caption>{caption}</caption><thead><tr>""");
        foreach (string head in heads)
        {
            html.Add($"""<th scope="col" class="{(head.StartsWith('#') ? "figure" : "text")}">{head.TrimStart('#')}</th>""");
        }

        html.Add($"</tr></thead><tbody>");
    }

    private static void Cell(HtmlWriter html, string head, string text) => html.Add($"""<td class="text" data-head="{head}">{text}</td>""");

    // A hyphen is no place to break a fingerprint or a mark at.
    private static void Whole(HtmlWriter html, string head, string text) => html.Add($"""<td class="text whole" data-head="{head}">{text}</td>""");

    private static void Marks(HtmlWriter html, string[] marks)
    {
        html.Raw("<td class=\"text\" data-head=\"units\"><span>");
        for (int i = 0; i < marks.Length; i++)
        {
            html.Add($"""<span class="whole">{marks[i]}{(i + 1 < marks.Length ? "," : "")}</span>""");
        }

        html.Add($"</span></td>");
    }

    private static void Figure(HtmlWriter html, string head, string text) => html.Add($"""<td class="figure" data-head="{head}">{text}</td>""");
}
