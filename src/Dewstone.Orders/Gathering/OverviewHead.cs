using Dewstone.Jobs.Emission.Report;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Orders.Gathering;

/// <summary>The first sheet of the overview: the verdict in one line, the figures of the order, and what to take care of.</summary>
internal static class OverviewHead
{
    /// <summary>Writes it.</summary>
    /// <param name="html">The page.</param>
    /// <param name="order">The order.</param>
    public static void Write(HtmlWriter html, GatheredOrder order)
    {
        int errors = order.Findings.Count(finding => finding.Severity == Severity.Error);
        html.Add($"""<section id="sheet"><header><div><p class="kind">Whole order</p><h1>{order.Order.Name}</h1></div>""");
        html.Add($"""<p class="state">{(errors == 0 ? "Complete" : $"Compiled; {errors} {(errors == 1 ? "error" : "errors")} at sea")}</p></header>""");
        Verdict(html, order);
        TooEarly(html, order);
        html.Add($"""<div class="charts">""");
        Left(html, order);
        Right(html, order);
        html.Add($"</div>");
        Cautions(html);
        html.Add($"</section>");
    }

    private static void Verdict(HtmlWriter html, GatheredOrder order)
    {
        DateTime last = order.Bins.Max(bin => bin.Planned.DigEnd);
        int margin = order.Order.Due.DayNumber - DateOnly.FromDateTime(last).DayNumber;
        string due = margin >= 0 ? $"{Days(margin)} before it is due" : $"{Days(-margin)} AFTER IT WAS DUE";
        html.Add($"""<p>{Counted(order.Units.Count, "unit", "units")} in {Counted(order.Bins.Count, "bin", "bins")} over {Counted(order.Nights.Count, "night", "nights")}; the last is dug out on <span class="whole">{$"{last:yyyy-MM-dd}"}</span>, {due} on <span class="whole">{$"{order.Order.Due:yyyy-MM-dd}"}</span>. Every unit passed the checks of its design, every file has the hash it was written with.</p>""");
    }

    private static void TooEarly(HtmlWriter html, GatheredOrder order)
    {
        if (order.EarlyDigs is { } early)
        {
            html.Add($"""<p><strong>The plan digs out {early.Which(order.Bins.Count)} before all their units are strong enough to be lifted, first <span class="whole">{early.Bins[0]}</span>:</strong> as compiled they take longer than it was planned with. Leave them in the mix until then, or plan again with <code class="whole">set_before_dig: {early.Hours} h</code> under <code>bins</code> in the order.</p>""");
        }
    }

    private static void Left(HtmlWriter html, GatheredOrder order)
    {
        BinTotals totals = order.Totals;
        html.Add($"<div>");
        ReportTable.Pairs(
            html,
            ("printing", $"{Span($"{order.Bins.Min(bin => bin.Planned.Start):yyyy-MM-dd}", $"{order.Bins.Max(bin => bin.Planned.PrintEnd):yyyy-MM-dd}")}, {OverviewTables.Hours(totals.PrinterSeconds)} of printers with setting up"),
            ("mix spread", $"{OverviewTables.Tonnes(totals.SpreadKilograms)}, of which {OverviewTables.Tonnes(totals.HardenedKilograms)} harden and {OverviewTables.Tonnes(totals.ReusableKilograms)} can be spread again"),
            ("binder in the units", OverviewTables.Tonnes(totals.BinderKilograms)),
            ("water", $"{totals.WaterLitres:0} L, and {totals.FlushLitres:0} L to flush"),
            ("carbon dioxide", $"{OverviewTables.Tonnes(totals.CarbonKilograms)} of what is used up"),
            ("cost", $"{OverviewTables.Cost(totals)} of what is used up"));
        html.Add($"</div>");
    }

    private static void Right(HtmlWriter html, GatheredOrder order)
    {
        GatheredUnit heaviest = order.Units.MaxBy(unit => unit.AtSea.LiftKilograms)!;
        double[] ages = [.. order.Units.Select(unit => unit.Record.Figures!.LiftDays).OfType<double>()];
        int redrawn = order.Units.Count(unit => unit.Record.Draws.Count > 1);
        html.Add($"<div>");
        ReportTable.Pairs(
            html,
            ("units lift", $"{OverviewTables.Tonnes(order.Units.Sum(unit => unit.AtSea.LiftKilograms))} together; heaviest {heaviest.Ordered.Mark} with {ReportFigures.Mass(heaviest.AtSea.LiftKilograms)}"),
            ("not lifted before", ages.Length == 0 ? "" : $"{Span(StrengthWords.Age(ages.Min()), StrengthWords.Age(ages.Max()))} of age{(ages.Length < order.Units.Count ? "; for some it is not known" : "")}"),
            ("drawn again", redrawn == 0 ? "" : $"{Counted(redrawn, "unit", "units")}: an earlier draw had failed a check"),
            ("barge", order.Loads is { } loads ? $"{Counted(loads.Trips.Count, "trip", "trips")}{(loads.LeastTrips > 1 ? $"; no loading needs fewer than {loads.LeastTrips}" : "")}" : ""),
            ("at sea", order.Standing.Count == 0 ? "" : $"{order.Standing.Max(at => at.Row)} rows, {order.Order.SitePlan!.Spacing.Metres:0.##} m clear, heading {ReportFigures.Bearing(order.Order.SitePlan.Heading.Degrees)}"));
        html.Add($"</div>");
    }

    private static void Cautions(HtmlWriter html)
    {
        html.Add($"""<div class="cautions"><h2>Take care</h2><ul>""");
        html.Add($"<li><strong>Predictions, not proof.</strong> Masses, strengths and ages are computed; break cubes cut from the same bed, weigh the first of each kind. A licensed engineer decides on lifting and on marine stability, local codes and the permit come before this page.</li>");
        html.Add($"<li><strong>Lifting</strong>: nobody under or beside a hanging load; slings, angles and ages as on each unit's sheet; stop when the load cell leaves its band.</li>");
        html.Add($"<li><strong>Work at sea</strong>: the master decides on payload, stability and lashing of the barge, on weather and on divers; wave and current limits are the crew's own. Units are heavier full of water than dry. Positions are plans on WGS 84: record where each mark really stands.</li>");
        html.Add($"<li><strong>Silica dust and wet cement</strong>: respirator, wet cleaning; gloves, eye protection; rinse burns at once and long.</li></ul></div>");
    }

    private static string Counted(int count, string one, string several) => $"{count} {(count == 1 ? one : several)}";

    private static string Span(string from, string to) => from == to ? from : $"{from} to {to}";

    private static string Days(int days) => Counted(days, "day", "days");
}
