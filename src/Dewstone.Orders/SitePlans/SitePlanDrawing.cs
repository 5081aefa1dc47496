using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Report;
using Dewstone.Model.Description;

namespace Dewstone.Orders.SitePlans;

/// <summary>
/// Writes <c>site-plan.svg</c>: the rows as they run, left to right along the heading, so that marks can be read whatever the heading is; an arrow shows
/// north. Drawn to scale, with the inks of the report on light and dark screens.
/// </summary>
public static class SitePlanDrawing
{
    /// <summary>Path in the order's folder.</summary>
    public const string Path = "site-plan.svg";

    private const double Left = 64.0;
    private const double Top = 96.0;
    private const double Beside = 60.0;
    private const double Right = 40.0;
    private const double Bottom = 70.0;
    private const double LetterWidth = 7.0;
    private const double LineHeight = 18.0;
    private const double MostScale = 60.0;
    private const double LeastWidth = 640.0;
    private const double FullHeight = 280.0;

    // Marks stand on a rim of paper, so that rows and cross do not run through them.
    private const string Style = """
        .mark { font-size: 11px; paint-order: stroke; stroke: var(--paper); stroke-width: 3px; stroke-linejoin: round; }
        .anchor { stroke: var(--excess); stroke-width: 2; fill: none; }

        """;

    private static readonly double[] Bars = [1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0];

    /// <summary>The picture.</summary>
    /// <param name="order">Name of the order.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="standing">Where the units stand; one or more.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(string order, SitePlan plan, IReadOnlyList<StandingUnit> standing)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(standing);
        Spot[] spots = [.. standing.Select(at => Spot.Of(at, plan.Heading.Degrees))];
        double ahead = spots.Max(spot => spot.Ahead + 0.5 * spot.Length), right = spots.Max(spot => spot.Right + 0.5 * spot.Depth);
        double behind = spots.Min(spot => spot.Ahead - 0.5 * spot.Length), left = spots.Min(spot => spot.Right - 0.5 * spot.Depth);
        // Wide enough for the marks beside one another and below their units; few units fill the sheet.
        double forMarks = Math.Max(
            LetterWidth * (1 + spots.Max(spot => spot.Mark.Length)) / (plan.Spacing.Metres + spots.Min(spot => spot.Length)), LineHeight / plan.Spacing.Metres);
        double toFill = Math.Min((LeastWidth - Left - Right) / (ahead - behind), FullHeight / (right - left));
        double scale = Math.Min(MostScale, Math.Max(forMarks, toFill));
        double width = Math.Max(LeastWidth, Left + Right + scale * (ahead - behind)), height = Top + Bottom + scale * (right - left);
        HtmlWriter svg = new();
        svg.Add($"""<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {height}" width="{width}" height="{height}" role="img" aria-labelledby="title"><title id="title">{order}: plan at sea</title>""");
        svg.Raw($"<style>{DrawingStyle.Text}{Style}</style>\n");
        svg.Add($"""<rect class="paper" width="{width}" height="{height}"/>""");
        svg.Add($"""<text class="name" x="{Left + Beside}" y="30">{order}: plan at sea</text>""");
        svg.Add($"""<text class="quiet" x="{Left + Beside}" y="50">{standing.Count.ToString()} units, clear distance {plan.Spacing.Metres.ToString("0.##")} m, rows and units head {plan.Heading.Degrees.ToString("000.#")}°</text>""");
        svg.Add($"""<text class="quiet" x="{Left + Beside}" y="67">anchor {PositionWords.Of(plan.AnchorLatitudeDegrees, plan.AnchorLongitudeDegrees)} (WGS 84), cross in the middle</text>""");
        foreach (IGrouping<int, Spot> row in spots.GroupBy(spot => spot.Row))
        {
            double middle = Top + scale * (row.First().Right - left);
            svg.Add($"""<path class="rule" d="M{Left} {middle}H{Left + scale * (ahead - behind)}"/><text class="quiet" text-anchor="end" x="{Left - 10.0}" y="{middle + 4.0}">row {row.Key}</text>""");
        }

        Cross(svg, Left - scale * behind, Top - scale * left);
        foreach (Spot spot in spots)
        {
            double x = Left + scale * (spot.Ahead - 0.5 * spot.Length - behind), y = Top + scale * (spot.Right - 0.5 * spot.Depth - left);
            svg.Add($"""<rect class="unit" x="{x}" y="{y}" width="{scale * spot.Length}" height="{scale * spot.Depth}"/><text class="mark" text-anchor="middle" x="{x + 0.5 * scale * spot.Length}" y="{y + scale * spot.Depth + 13.0}">{spot.Mark}</text>""");
        }

        North(svg, Left, 46.0, plan.Heading.Degrees);
        Scale(svg, Left, height - 24.0, scale);
        svg.Raw("</svg>\n");
        return new EmittedFile(Path, svg.ToBytes());
    }

    private static void Cross(HtmlWriter svg, double x, double y) => svg.Add($"""<path class="anchor" d="M{x - 7.0} {y}H{x + 7.0}M{x} {y - 7.0}V{y + 7.0}"/>""");

    // Right on the sheet is the heading, so north lies as many degrees back from there as the heading has.
    private static void North(HtmlWriter svg, double x, double y, double headingDegrees)
    {
        svg.Add($"""<g transform="translate({x} {y}) rotate({90.0 - headingDegrees})"><path class="arrow" d="M0 24V-14"/><path class="head" d="M0 -26L6 -10H-6Z"/></g>""");
        (double sine, double cosine) = Math.SinCos((90.0 - headingDegrees) * Math.PI / 180.0);
        svg.Add($"""<text text-anchor="middle" x="{x + 36.0 * sine}" y="{y - 36.0 * cosine + 4.0}">N</text>""");
    }

    private static void Scale(HtmlWriter svg, double x, double y, double scale)
    {
        double metres = Bars.Last(length => length <= 1.0 || length * scale <= 200.0);
        svg.Add($"""<path class="arrow" d="M{x} {y - 5.0}V{y}H{x + metres * scale}V{y - 5.0}"/><text x="{x + metres * scale + 8.0}" y="{y + 2.0}">{metres.ToString("0")} m</text>""");
    }

    /// <summary>A unit in the frame of the rows, m.</summary>
    private sealed record Spot(string Mark, int Row, double Ahead, double Right, double Length, double Depth)
    {
        public static Spot Of(StandingUnit at, double headingDegrees)
        {
            (double sine, double cosine) = Math.SinCos(headingDegrees * Math.PI / 180.0);
            GroundPoint middle = at.Middle;
            return new Spot(
                at.Unit.Mark, at.Row, middle.EastMetres * sine + middle.NorthMetres * cosine, middle.EastMetres * cosine - middle.NorthMetres * sine, at.Unit.Size.Y, at.Unit.Size.X);
        }
    }
}
