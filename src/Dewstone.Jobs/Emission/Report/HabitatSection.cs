using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>What the predicted solid offers as a place to live: the refuge curve, holes, surface, open sky.</summary>
internal static class HabitatSection
{
    private const int MostHoles = 12;

    /// <summary>Writes the part.</summary>
    /// <param name="html">The page.</param>
    /// <param name="subject">The job.</param>
    public static void Write(HtmlWriter html, ReportSubject subject)
    {
        if (subject.Job.Habitat is not { } habitat)
        {
            html.Add($"<p>The predicted solid was not surveyed as a place to live.</p>");
            return;
        }

        html.Add($"<p>{Refuge(habitat)}</p>");
        html.Add($"""<div class="charts">""");
        Curve(html, habitat);
        ReportTable.Write(html, "Surface in the water", ["figure", "#value"],
        [
            ["area", ReportFigures.SquareMetres(habitat.SurfaceSquareMetres)],
            ["over the area seen from above", ReportFigures.Factor(habitat.Rugosity)],
            ["vector ruggedness (0 flat, 1 closed)", ReportFigures.Ratio(habitat.VectorRuggedness)],
            ["box-counting dimension", ReportFigures.Factor(habitat.Dimension)],
            ["faces up", ReportFigures.Share(habitat.ShareUp)],
            ["faces sideways", ReportFigures.Share(habitat.ShareSideways)],
            ["faces down", ReportFigures.Share(habitat.ShareDown)],
            ["open sky, mean", ReportFigures.Share(habitat.OpenSky)],
            .. HabitatReport.SkyClasses.Select((from, i) => (string[])
            [
                $"of it, sees {100.0 * from:0} to {(i + 1 < HabitatReport.SkyClasses.Count ? 100.0 * HabitatReport.SkyClasses[i + 1] : 100.0):0} % of the sky",
                ReportFigures.Share(habitat.OpenSkyShares[i]),
            ]),
        ]);
        ReportTable.Write(
            html, $"Holes by their widest mouth, {habitat.Holes.Count} in all", ["mouth from", "#holes", "#with one mouth", "#with more", "#volume"],
            HabitatReport.MouthClasses.Select((from, i) => (from, Holes: habitat.InClass(i).ToList())).Select(row => (string[])
            [
                ReportFigures.Length(row.from), $"{row.Holes.Count}", $"{row.Holes.Count(hole => hole.Exits == 1)}", $"{row.Holes.Count(hole => hole.Exits > 1)}",
                ReportFigures.Litres(row.Holes.Sum(hole => hole.CubicMetres)),
            ]));
        html.Add($"</div>");
        if (habitat.Holes.Count > 0)
        {
            ReportTable.Write(
                html, habitat.Holes.Count > MostHoles ? $"Holes: the largest {MostHoles} of {habitat.Holes.Count}" : "Holes",
                ["number", "#volume", "#mouths", "#widest mouth", "#its height above the seabed", "#depth behind the nearest mouth"],
                habitat.Holes.Take(MostHoles).Select((hole, i) => (string[])
                [
                    $"{i + 1}", ReportFigures.Litres(hole.CubicMetres), $"{hole.Exits}", ReportFigures.Length(hole.MouthMetres),
                    ReportFigures.Length(hole.MouthHeightMetres), ReportFigures.Length(hole.DepthMetres),
                ]));
        }

        html.Add($"<p>Counted on cells of {ReportFigures.Length(habitat.CellMetres)} within the unit's outer box, standing on the seabed, which closes it from below. Holes count from a mouth of {ReportFigures.Length(HabitatReport.LeastEntranceMetres)}. Which animals come is the sea's affair; no figure here has been held against a settled unit.</p>");
    }

    private static string Refuge(HabitatReport habitat) => habitat switch
    {
        { RefugeCubicMetres: { } refuge, ShelteredMetres: { } sheltered, PredatorMetres: { } predator } =>
            $"An animal {ReportFigures.Length(sheltered)} deep reaches {ReportFigures.Litres(refuge)} that one of {ReportFigures.Length(predator)} cannot.",
        { ShelteredMetres: { } sheltered } => $"What shelters an animal {ReportFigures.Length(sheltered)} deep is finer than the cells tell.",
        _ => "The site names no animals, so no refuge was judged.",
    };

    private static void Curve(HtmlWriter html, HabitatReport habitat)
    {
        IReadOnlyList<RefugePoint> curve = habitat.Curve;
        double first = Math.Log(curve[0].DiameterMetres), last = Math.Log(curve[^1].DiameterMetres);
        double most = Math.Max(1e-3, 1.05e3 * curve.Max(point => point.CubicMetres));
        ChartFrame frame = new(millimetres => (Math.Log(millimetres / 1000.0) - first) / (last - first), most);
        frame.Open(html, "Refuge: water that a ball reaches from outside, by its diameter", [10, 20, 50, 100, 200, 400], "diameter, mm", "L");
        foreach ((RefugePoint from, RefugePoint to) in curve.Zip(curve.Skip(1)))
        {
            frame.Curve(html, from.IsSure && to.IsSure ? "curve first" : "curve first unsure", [Point(from), Point(to)]);
        }

        foreach ((double? depth, string name) in new[] { (habitat.ShelteredMetres, "sheltered"), (habitat.PredatorMetres, "predator") })
        {
            if (depth is { } metres && metres >= curve[0].DiameterMetres && metres <= curve[^1].DiameterMetres)
            {
                double x = frame.X(1000.0 * metres);
                RefugePoint own = curve.First(point => point.DiameterMetres == metres);
                html.Add($"""<circle class="mark" cx="{x}" cy="{frame.Y(1000.0 * own.CubicMetres)}" r="{(own.IsSure ? 4.0 : 0.0)}" />""");
                html.Add($"""<path class="curve second" d="M{x} {ChartFrame.Top}V{ChartFrame.Top + ChartFrame.Height}" /><text x="{x + 4.0}" y="{ChartFrame.Top + (name == "predator" ? 26.0 : 12.0)}">{name}</text>""");
            }
        }

        html.Add($"""</svg><p class="quiet">Broken line: balls less than four cells wide, not judged by. Dots: the animals, on finer cells where these are too coarse.</p></figure>""");
    }

    private static (double Across, double Up) Point(RefugePoint point) => (1000.0 * point.DiameterMetres, 1000.0 * point.CubicMetres);
}
