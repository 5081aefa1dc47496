using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>What the checks of the predicted solid found: openings, walls, pieces apart, mix that cannot get out.</summary>
internal static class InspectionSection
{
    private const int MostPieces = 8;

    /// <summary>Writes the part.</summary>
    /// <param name="html">The page.</param>
    /// <param name="subject">The job.</param>
    public static void Write(HtmlWriter html, ReportSubject subject)
    {
        if (subject.Job.Inspection is not { } found)
        {
            html.Add($"<p>The predicted solid was not inspected.</p>");
            return;
        }

        Openings(html, found.ClearOpenings);
        html.Add($"""<div class="charts">""");
        Match(html, found.ShapeMatch);
        Walls(html, found.Wall);
        if (found.Wall.Shares.Count > 0)
        {
            ColumnChart.Standing(
                html, $"Thickness of the solid: % of its volume in each {ReportFigures.Length(WallReport.BinMetres)}",
                [.. found.Wall.Shares.Select((share, bin) => new NamedAmount(ReportFigures.Millimetres(bin * WallReport.BinMetres), 100.0 * share))], "mm");
        }

        WaterCement(html, found.WaterCement);
        html.Add($"</div>");
        if (found.Wall.ThinPlaces.Count > 0)
        {
            ReportTable.Write(
                html, Shown("Places thinner than the wall asked for", found.Wall.ThinPlaces.Count), ["kind", "#thickness", "at, in the unit"],
                found.Wall.ThinPlaces.Take(MostPieces).Select(place => (string[])
                    [place.IsNeck ? "neck" : "thin part", ReportFigures.Length(place.ThicknessMetres), ReportFigures.Place(place.Where)]));
        }

        Pieces(html, "Pieces apart from the main one", found.LoosePieces.Pieces);
        html.Add($"<p>{(found.LoosePieces.Pieces.Count == 0 ? "Everything that sets hangs together. " : "")}Crumbs: {found.LoosePieces.Crumbs}, {ReportFigures.Mass(found.LoosePieces.CrumbKilograms)} in all. Mix that cannot be got out with a tool of {ReportFigures.Length(found.TrappedMix.ToolMetres)}: {ReportFigures.Mass(found.TrappedMix.Kilograms)}.</p>");
        Pieces(html, "Where mix is trapped", found.TrappedMix.Pockets);
        Zones(html, found.SoundZones);
        Traps(html, found.AnimalTraps);
    }

    private static void Openings(HtmlWriter html, IReadOnlyList<ClearOpening> openings)
    {
        if (openings.Count > 0)
        {
            ReportTable.Write(
                html, "Clear openings: the largest ball that gets through", ["opening", "#drawn", "#predicted", "#asked", "narrowest at, in the unit"],
                openings.Select(opening => (string[])
                [
                    opening.Hollow < 0 ? opening.Name : $"{opening.Name}, hollow {opening.Hollow + 1}",
                    ReportFigures.Length(opening.WantedMetres),
                    opening.PredictedMetres > 0.0 ? ReportFigures.Length(opening.PredictedMetres) : "closed",
                    opening.RequiredMetres is { } asked ? ReportFigures.Length(asked) : "–",
                    opening.Narrowest is { } place ? ReportFigures.Place(place) : "–",
                ]));
        }
    }

    private static void Match(HtmlWriter html, ShapeMatchReport match) =>
        ReportTable.Write(html, "Predicted against wanted surface", ["figure", "#value"],
        [
            ["mean distance", ReportFigures.Length(match.MeanMetres)],
            ["mean distance, outward above 0", ReportFigures.Length(match.SignedMeanMetres)],
            ["95 % of the surfaces are nearer than", ReportFigures.Length(match.Percentile95Metres)],
            ["volume within the predicted surface", ReportFigures.Litres(match.SurfaceCubicMetres)],
            ["volume above the wanted", ReportFigures.SignedShare(match.VolumeError)],
            ["wanted deeper than 20 mm, stays loose", ReportFigures.Share(match.DeepUnsetShare)],
        ]);

    private static void Walls(HtmlWriter html, WallReport wall)
    {
        ReportTable.Write(html, "Thickness of the solid", ["figure", "#thickness"],
        [
            ["5 % of the volume is thinner than", ReportFigures.Length(wall.Percentile5Metres)],
            ["half of the volume is thinner than", ReportFigures.Length(wall.MedianMetres)],
            ["95 % of the volume is thinner than", ReportFigures.Length(wall.Percentile95Metres)],
            ["wall asked for", wall.WantedMetres is { } wanted ? ReportFigures.Length(wanted) : "none"],
            ["least neck", Neck(wall)],
        ]);
    }

    private static void WaterCement(HtmlWriter html, WaterCementReport? water)
    {
        if (water is not null)
        {
            ReportTable.Write(html, "Water/cement against the band asked for", ["figure", "#value"],
            [
                ["mean of all that sets", ReportFigures.Ratio(water.Mean)],
                ["below the band, of the volume", ReportFigures.Share(water.ShareBelow)],
                ["above the band, of the volume", ReportFigures.Share(water.ShareAbove)],
                ["mean of the outermost 10 mm", ReportFigures.Ratio(water.SkinMean)],
                ["outside the band, of the outermost 10 mm", ReportFigures.Share(water.SkinShareOutside)],
                ["largest region outside the band", water.Largest is { } place ? $"{ReportFigures.Litres(water.LargestCubicMetres)} at {ReportFigures.Place(place)}" : "none"],
            ]);
        }
    }

    private static string Neck(WallReport wall) => (wall.LeastNeckMetres, wall.WantedMetres) switch
    {
        ({ } neck, { } wanted) when neck >= wanted => $"at least {ReportFigures.Length(neck)}",
        ({ } neck, _) => ReportFigures.Length(neck),
        _ => "not sought",
    };

    private static void Pieces(HtmlWriter html, string caption, IReadOnlyList<SolidPiece> pieces)
    {
        if (pieces.Count > 0)
        {
            ReportTable.Write(html, Shown(caption, pieces.Count), ["number", "#mass", "at, in the unit"], pieces.Take(MostPieces).Select((piece, i) => (string[])
                [$"{i + 1}", ReportFigures.Mass(piece.Kilograms), ReportFigures.Place(piece.Centre)]));
        }
    }

    private static string Shown(string caption, int count) => count > MostPieces ? $"{caption}: the {MostPieces} largest of {count}" : caption;

    private static void Zones(HtmlWriter html, IReadOnlyList<SoundZone> zones)
    {
        if (zones.Count > 0)
        {
            ReportTable.Write(html, "Zones that have to be sound", ["zone", "#stays loose, share", "#stays loose", "at, in the unit"], zones.Select(zone => (string[])
                [zone.Name, ReportFigures.Share(zone.UnsetShare), ReportFigures.Litres(zone.UnsetCubicMetres), zone.Where is { } where ? ReportFigures.Place(where) : "–"]));
        }
    }

    private static void Traps(HtmlWriter html, IReadOnlyList<AnimalTrap> traps)
    {
        if (traps.Count > 0)
        {
            ReportTable.Write(html, "Hollows that may trap an animal", ["hollow", "#clear opening", "#depth", "mouth at, in the unit"], traps.Select(trap => (string[])
                [trap.Name, ReportFigures.Length(trap.ClearMetres), ReportFigures.Length(trap.DropMetres), ReportFigures.Place(trap.Where)]));
        }
    }
}
