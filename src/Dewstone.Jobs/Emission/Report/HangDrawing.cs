using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>The unit from above with its straps or inserts and its centre of gravity, and the legs of the sling from the side.</summary>
internal static class HangDrawing
{
    private const double Side = 150.0, Left = 50.0, Wide = 270.0;

    /// <summary>Draws.</summary>
    /// <param name="html">The page.</param>
    /// <param name="unit">The unit.</param>
    /// <param name="lifting">Its hang.</param>
    public static void Write(HtmlWriter html, ReefUnit unit, LiftingReport lifting)
    {
        Size3 box = unit.OuterBox;
        double scale = Side / Math.Max(Math.Max(box.X, box.Y), box.Z), width = box.X * scale, depth = box.Y * scale, tall = box.Z * scale;
        double degrees = lifting.Hang?.SlingDegrees ?? 60.0, reach = Reach(unit, box) * scale;
        double rise = lifting.Hang is null ? 0.0 : Math.Min(1.1 * Side, reach * Math.Tan(degrees * Math.PI / 180.0)), top = 22.0 + rise;
        double plan = top + tall + 36.0;
        html.Add($"""<figure class="plan"><svg viewBox="0 0 {Math.Max(Left + width + 40.0, Wide)} {plan + depth + 24.0}" role="img" aria-label="The unit from the south and from above, with what it hangs by and its centre of gravity.">""");
        html.Add($"""<text x="{Left}" y="{top + tall + 16.0}">from the south</text><rect class="body" x="{Left}" y="{top}" width="{width}" height="{tall}" />""");
        html.Add($"""<text x="{Left}" y="{plan + depth + 18.0}">from above, north up</text><rect class="body" x="{Left}" y="{plan}" width="{width}" height="{depth}" />""");
        double hook = Left + Middle(unit, box) * scale;
        foreach ((Point3 from, Point3 to) in Lines(unit, box))
        {
            html.Add($"""<path class="strap" d="M{Left + from.X * scale} {plan + depth - from.Y * scale}L{Left + to.X * scale} {plan + depth - to.Y * scale}" />""");
            foreach (double x in from.X == to.X ? (double[])[from.X] : [from.X, to.X])
            {
                html.Add($"""<path class="sling" d="M{hook} {top - rise}L{Left + x * scale} {top}{(from.Z == 0.0 ? $"V{top + tall:0.##}" : "")}" />""");
            }

            Name(html, from, to, box, Left + from.X * scale, plan + depth - from.Y * scale);
        }

        if (lifting.Hang is not null)
        {
            html.Add($"""<circle class="sling" cx="{hook}" cy="{top - rise - 6.0}" r="5" /><text x="{hook + 12.0}" y="{top - rise + 2.0}">{Math.Round(degrees, 1)}°</text>""");
        }

        Point3 centre = lifting.CentreOfGravity;
        Cross(html, Left + centre.X * scale, top + tall - centre.Z * scale);
        Cross(html, Left + centre.X * scale, plan + depth - centre.Y * scale);
        html.Add($"</svg><figcaption>Straps or inserts (thick), centre of gravity (cross). Millimetres of the unit.</figcaption></figure>");
    }

    // Beside the line or stroke, on the side where the unit is wider, so that no name crosses its edge.
    private static void Name(HtmlWriter html, Point3 from, Point3 to, Size3 box, double x, double y)
    {
        bool isAcross = from.X == to.X, isEast = isAcross && from.X > 0.5 * box.X, isNorth = !isAcross && from.Y > 0.5 * box.Y;
        html.Add($"""<text text-anchor="{(isEast ? "end" : "start")}" x="{x + (isEast ? -5.0 : 5.0)}" y="{y + (isNorth ? 14.0 : isAcross ? -8.0 : -5.0)}">{(isAcross ? $"x {ReportFigures.Millimetres(from.X)}" : $"y {ReportFigures.Millimetres(from.Y)}")}</text>""");
    }

    private static void Cross(HtmlWriter html, double x, double y) =>
        html.Add($"""<path class="sling" d="M{x - 8.0} {y}H{x + 8.0}M{x} {y - 8.0}V{y + 8.0}" />""");

    // Straps from side to side under the unit; an insert is a short stroke at its place.
    private static IEnumerable<(Point3 From, Point3 To)> Lines(ReefUnit unit, Size3 box) => unit.Lifting switch
    {
        StrapLifting straps => straps.Lines.Select(line => line.Along == Axis.X
            ? (new Point3(0.0, line.At.Metres, 0.0), new Point3(box.X, line.At.Metres, 0.0))
            : (new Point3(line.At.Metres, 0.0, 0.0), new Point3(line.At.Metres, box.Y, 0.0))),
        InsertLifting inserts => inserts.Points.Select(point => (point, point + new Point3(0.0, 0.02, 0.0))),
        _ => [],
    };

    private static double Middle(ReefUnit unit, Size3 box) => Lines(unit, box).Select(line => 0.5 * (line.From.X + line.To.X)).DefaultIfEmpty(0.5 * box.X).Average();

    private static double Reach(ReefUnit unit, Size3 box) =>
        Lines(unit, box).SelectMany(line => (double[])[line.From.X, line.To.X]).Select(x => Math.Abs(x - Middle(unit, box))).DefaultIfEmpty(0.0).Max();
}
