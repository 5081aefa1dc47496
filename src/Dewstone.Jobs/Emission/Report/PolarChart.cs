using System.Text;
using Dewstone.Model.Description;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>The factors of safety by the unit's heading, as a drawing in the page: north up, the farther out the safer.</summary>
internal static class PolarChart
{
    private const double Size = 460.0;
    private const double Middle = Size / 2.0;
    private const double Radius = 168.0;
    private const double LeastRange = 4.0;
    private const double MostRange = 12.0;

    /// <summary>Draws it.</summary>
    /// <param name="html">The page.</param>
    /// <param name="report">How the unit stands.</param>
    /// <param name="site">What is asked, and where wave and current go.</param>
    public static void Write(HtmlWriter html, StabilityReport report, Site site)
    {
        double range = Math.Clamp(Math.Ceiling(1.1 * report.Headings.Max(heading => Math.Max(heading.Sliding, heading.Overturning))), LeastRange, MostRange);
        html.Add($"""<figure><figcaption>Factor of safety by the heading of the unit's +y, north up</figcaption><svg viewBox="0 0 {Size} {Size + 44.0}" role="img" aria-label="Least factor against sliding {ReportFigures.Factor(report.Sliding)}, against overturning {ReportFigures.Factor(report.Overturning)}">""");
        double step = range <= 6.0 ? 1.0 : 2.0;
        for (double ring = step; ring <= range + 0.001; ring += step)
        {
            html.Add($"""<circle class="ruling" cx="{Middle}" cy="{Middle}" r="{Radius * ring / range}" /><text x="{Middle + 3.0}" y="{Middle - Radius * ring / range + 12.0}" class="small quiet">{ReportFigures.Plain(ring)}</text>""");
        }

        for (int bearing = 0; bearing < 360; bearing += 30)
        {
            (double x, double y) = At(bearing, 1.0);
            (double nameX, double nameY) = At(bearing, 1.0 + 16.0 / Radius);
            html.Add($"""<path class="ruling" d="M{Middle} {Middle}L{x} {y}" /><text x="{nameX}" y="{nameY + 4.0}" text-anchor="middle">{Name(bearing)}</text>""");
        }

        Ring(html, "first asked", site.Safety.Sliding, range);
        Ring(html, "second asked", site.Safety.Overturning, range);
        Curve(html, "first", report.Headings.Select(heading => (heading.HeadingDegrees, heading.Sliding)), range);
        Curve(html, "second", report.Headings.Select(heading => (heading.HeadingDegrees, heading.Overturning)), range);
        Arrow(html, site.Wave.Direction.Degrees, inward: true, "waves");
        if (site.Current is { Speed.MetresPerSecond: > 0.0 } current)
        {
            Arrow(html, current.Direction.Degrees, inward: false, "current");
        }

        html.Add($"""<path class="curve first" d="M20 {Size + 14.0}h34" /><text x="60" y="{Size + 18.0}">sliding</text><path class="curve second" d="M150 {Size + 14.0}h34" /><text x="190" y="{Size + 18.0}">overturning</text><path class="curve first asked" d="M300 {Size + 14.0}h34" /><text x="340" y="{Size + 18.0}">asked (thin rings)</text>""");
        html.Add($"""<text x="20" y="{Size + 37.0}" class="quiet">best heading {ReportFigures.Bearing(report.SafeHeadingDegrees)}{(report.Headings.Any(h => Math.Max(h.Sliding, h.Overturning) > range) ? $"; more than {ReportFigures.Plain(range)} is drawn at the rim" : "")}</text></svg></figure>""");
    }

    private static void Ring(HtmlWriter html, string look, double factor, double range)
    {
        if (factor <= range)
        {
            html.Add($"""<circle class="curve {look}" cx="{Middle}" cy="{Middle}" r="{Radius * factor / range}" />""");
        }
    }

    private static void Curve(HtmlWriter html, string look, IEnumerable<(double Bearing, double Factor)> points, double range)
    {
        StringBuilder path = new();
        foreach ((double bearing, double factor) in points)
        {
            (double x, double y) = At(bearing, Math.Min(factor, range) / range);
            path.Append($"{(path.Length == 0 ? 'M' : 'L')}{Math.Round(x, 2)} {Math.Round(y, 2)}");
        }

        html.Add($"""<path class="curve {look}" d="{path.ToString()}Z" />""");
    }

    // Outside the rim: waves come in from their direction, the current leaves in its own.
    private static void Arrow(HtmlWriter html, double bearing, bool inward, string name)
    {
        (double tipX, double tipY) = At(bearing, inward ? 1.18 : 1.32);
        (double endX, double endY) = At(bearing, inward ? 1.32 : 1.18);
        (double leftX, double leftY) = At(bearing - 2.5, inward ? 1.22 : 1.28);
        (double rightX, double rightY) = At(bearing + 2.5, inward ? 1.22 : 1.28);
        (double nameX, double nameY) = At(bearing + 12.0, 1.25);
        html.Add($"""<path class="arrow" d="M{endX} {endY}L{tipX} {tipY}M{leftX} {leftY}L{tipX} {tipY}L{rightX} {rightY}" /><text x="{nameX}" y="{nameY + 4.0}" text-anchor="middle">{name}</text>""");
    }

    private static (double X, double Y) At(double bearing, double share)
    {
        double angle = bearing * Math.PI / 180.0;
        return (Middle + Radius * share * Math.Sin(angle), Middle - Radius * share * Math.Cos(angle));
    }

    private static string Name(int bearing) => bearing switch { 0 => "N", 90 => "E", 180 => "S", 270 => "W", _ => $"{bearing}°" };
}
