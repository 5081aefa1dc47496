using Dewstone.Model.Description;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>How the unit stands at its site: factors by heading, the storm that moves it, levels, bearing, scour, cross-checks, and who decides.</summary>
internal static class SeaSection
{
    /// <summary>Writes the part.</summary>
    /// <param name="html">The page.</param>
    /// <param name="subject">The job.</param>
    public static void Write(HtmlWriter html, ReportSubject subject)
    {
        if (subject.Job is not { Sea: { } sea, Description.Site: { } site })
        {
            html.Add($"<p>{(subject.Job.Description.Site is null ? "No site was named, so how the unit stands in the sea was not judged." : "The site's figures allow no judgement; see the findings.")}</p>");
            return;
        }

        html.Add($"<p>At {sea.Site}, over every heading, both water levels and every phase of the design wave: least factor against sliding {ReportFigures.Factor(sea.Sliding)}, against overturning {ReportFigures.Factor(sea.Overturning)}{(sea.Bearing is { } foot ? $", against failure of the seabed {ReportFigures.Factor(foot.Factor)}" : "")}.</p>");
        html.Add($"""<div class="charts">""");
        PolarChart.Write(html, sea, site);
        StormChart.Write(html, sea, site);
        Stand(html, sea);
        Ground(html, sea, site);
        html.Add($"</div>");
        ReportTable.Write(
            html, "Water and design wave", ["level", "#depth", "#over the unit", "#height asked", "#depth bears", "#steepness bears", "#height used", "#wave length", "#speed", "#row lets pass"],
            sea.Levels.Select(level => (string[])
            [
                $"{level.Name} water{(level.Breaks ? ", waves break" : "")}", ReportFigures.Metres(level.DepthMetres), ReportFigures.Metres(level.CoverMetres),
                ReportFigures.Metres(level.AskedMetres), ReportFigures.Metres(level.DepthLimitMetres), ReportFigures.Metres(level.SteepnessLimitMetres),
                ReportFigures.Metres(level.HeightMetres), ReportFigures.Metres(level.LengthMetres), $"{level.SpeedMetresPerSecond:0.00} m/s",
                ReportFigures.Share(level.Transmission) + (level.TransmissionInRange ? "" : " (out of range)"),
            ]));
        Limits(html, sea, site);
    }

    private static void Stand(HtmlWriter html, StabilityReport sea) =>
        ReportTable.Write(html, "The unit on the seabed", ["figure", "#value"],
        [
            ["mass with full pores", ReportFigures.Mass(sea.SaturatedKilograms)],
            ["weight under water, full pores", ReportFigures.Kilonewtons(sea.SubmergedNewtons)],
            ["weight under water as lowered", ReportFigures.Kilonewtons(sea.FreshSubmergedNewtons)],
            ["factors as lowered: sliding, overturning", $"{ReportFigures.Factor(sea.FreshSliding)}, {ReportFigures.Factor(sea.FreshOverturning)}"],
            ["least mass of this shape that stands", sea.LeastSaturatedKilograms is { } least ? ReportFigures.Mass(least) : "none"],
            ["height", ReportFigures.Metres(sea.Body.HeightMetres)],
            ["area seen from above", ReportFigures.SquareMetres(sea.Body.PlanSquareMetres)],
            ["area on the seabed, bedded 50 mm", ReportFigures.SquareMetres(sea.Body.ContactSquareMetres)],
            ["outline it turns over", ReportFigures.SquareMetres(sea.Body.FootprintSquareMetres)],
            ["centre of mass above the seabed", ReportFigures.Metres(sea.Body.Centre.Z)],
            ["density of the sea water", ReportFigures.Density(sea.WaterDensity)],
        ]);

    private static void Ground(HtmlWriter html, StabilityReport sea, Site site)
    {
        List<string[]> rows = [];
        if (sea.Bearing is { } bearing)
        {
            rows.Add(["pressure under it", ReportFigures.Kilopascals(bearing.PressurePascals)]);
            rows.Add(["load off the middle when pushed", ReportFigures.Length(bearing.EccentricityMetres)]);
            rows.AddRange(bearing.CapacityPascals.Select(capacity => (string[])[$"seabed bears, {capacity.Name}", ReportFigures.Kilopascals(capacity.Amount)]));
            rows.Add([$"factor, by {bearing.Method}", ReportFigures.Factor(bearing.Factor)]);
            if (bearing.SettlementMetres is { } settled)
            {
                rows.Add(["settles, seabed elastic", ReportFigures.Length(settled)]);
            }

            rows.Add(["sinks in still water", ReportFigures.Length(bearing.SinkageMetres)]);
        }

        if (sea.Scour is { } scour)
        {
            rows.Add(["sand begins to move at", $"{scour.ThresholdPascals:0.00} Pa"]);
            rows.Add(["stress of the design sea on the bed", $"{scour.StressPascals:0.00} Pa{(scour.Moves ? ": it moves" : "")}"]);
            rows.Add(["scour beside a pile so wide (order of size)", ReportFigures.Length(scour.PileDepthMetres)]);
        }

        rows.Add(["Hudson, a stone on 1 to 2, KD 4 (cross-check)", ReportFigures.Mass(sea.HudsonKilograms)]);
        rows.Add(["Isbash, a ball lying open (cross-check)", $"{ReportFigures.Length(sea.IsbashMetres)}; the unit's {ReportFigures.Length(sea.BallMetres)}"]);
        rows.Add(["drag, inertia, lift coefficients", $"{site.Forces.Drag:0.##}, {site.Forces.Inertia:0.##}, {site.Forces.Lift:0.##}"]);
        ReportTable.Write(html, "Seabed and cross-checks", ["figure", "#value"], rows);
    }

    private static void Limits(HtmlWriter html, StabilityReport sea, Site site)
    {
        html.Add($"<ul><li><strong>A licensed engineer decides on marine stability.</strong> These are published formulas for one unit alone on an even seabed: Airy waves, Morison forces, friction, no slamming, no waves of other directions.</li>");
        html.Add($"<li>Permits, the charted depth and notice to mariners are the authorities' to give; divers and vessels work to their own rules when units are set.</li>");
        html.Add($"<li>What a row lets pass is d'Angremond's formula for an unbroken mound; units with gaps between them let more through.</li>");
        if (site.Permit is { Source.Length: > 0 } permit)
        {
            html.Add($"<li>Permit limits from: {permit.Source}.</li>");
        }

        html.Add($"<li>Every heading, level and phase stands in stability.csv, with all that a hand needs to work it out again: {sea.Rows.Count} rows.</li></ul>");
    }
}
