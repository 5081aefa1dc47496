using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Orders.SitePlans;

/// <summary>Holds a site plan, as its positions say it, against the clear distance asked for and the rules of the site.</summary>
public static class SiteCheck
{
    private const double MostLatitudeDegrees = 85.0;
    private const double GrainMetres = 0.005;

    private static readonly KeyPath Plan = new(DescriptionKind.Order, "site_plan");

    /// <summary>Whether the anchor is one that plans can be drawn about.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="units">How many units.</param>
    /// <returns>Findings; an error where nothing can be set out.</returns>
    public static IReadOnlyList<Diagnostic> Before(SitePlan plan, int units)
    {
        ArgumentNullException.ThrowIfNull(plan);
        List<Diagnostic> findings = [];
        if (Math.Abs(plan.AnchorLatitudeDegrees) > MostLatitudeDegrees)
        {
            findings.Add(YardFindings.AnchorUnsuited.At(
                $"the anchor lies at {Math.Abs(plan.AnchorLatitudeDegrees):0.##} degrees of latitude, where east and north turn within the plan",
                $"choose an anchor below {MostLatitudeDegrees:0} degrees", Plan.Key("anchor")));
        }

        if (plan.Rows > units)
        {
            findings.Add(YardFindings.RowsUnused.At($"{plan.Rows} rows were asked for and there are {units} units", $"ask for {units} rows or fewer", Plan.Key("rows")));
        }

        return findings;
    }

    /// <summary>Judges the plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="standing">Where the units stand.</param>
    /// <returns>Findings, in a fixed order.</returns>
    public static IReadOnlyList<Diagnostic> After(SitePlan plan, IReadOnlyList<StandingUnit> standing)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(standing);
        List<Diagnostic> findings = [];
        if (standing.SelectMany(unit => unit.Corners).Any(corner => Math.Abs(corner.LongitudeDegrees) > 180.0))
        {
            findings.Add(YardFindings.AnchorUnsuited.At("the plan crosses the meridian of 180 degrees", "move the anchor to one side of it, or make two plans", Plan.Key("anchor")));
        }

        if (Nearest(plan, standing) is { } near && near.Metres < plan.Spacing.Metres - GrainMetres)
        {
            findings.Add(YardFindings.TooNear.At(
                $"{near.First} and {near.Second} stand {near.Metres:0.000} m apart, {plan.Spacing.Metres:0.###} m were asked for", "give the plan more room", Plan.Key("spacing")));
        }

        return [.. findings, .. SiteRules(standing)];
    }

    /// <summary>The two units that stand nearest to one another.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="standing">Where the units stand.</param>
    /// <returns>Their marks and the clear distance between their footprints, m, 0 where they overlap; null with fewer than two units.</returns>
    public static (string First, string Second, double Metres)? Nearest(SitePlan plan, IReadOnlyList<StandingUnit> standing)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(standing);
        AnchorFrame frame = new(new GeographicPosition(plan.AnchorLatitudeDegrees, plan.AnchorLongitudeDegrees));
        // Swept along the rows, where few stand abreast; across them thousands might.
        (double sine, double cosine) = Math.SinCos(plan.Heading.Degrees * Math.PI / 180.0);
        GroundPoint AlongRows(GroundPoint at) => new(at.EastMetres * sine + at.NorthMetres * cosine, at.EastMetres * cosine - at.NorthMetres * sine);
        Footprint[] prints = [.. standing.Select(unit => new Footprint([.. unit.Corners.Select(corner => AlongRows(frame.Point(corner)))]))];
        int[] inOrder = [.. Enumerable.Range(0, prints.Length).OrderBy(i => prints[i].Begin).ThenBy(i => i)];
        (string First, string Second, double Metres)? nearest = null;
        for (int i = 0; i < inOrder.Length; i++)
        {
            Footprint one = prints[inOrder[i]];
            for (int j = i + 1; j < inOrder.Length && prints[inOrder[j]].Begin - one.End < (nearest?.Metres ?? double.PositiveInfinity); j++)
            {
                double metres = one.ClearMetres(prints[inOrder[j]]);
                if (nearest is null || metres < nearest.Value.Metres)
                {
                    nearest = (standing[inOrder[i]].Unit.Mark, standing[inOrder[j]].Unit.Mark, metres);
                }
            }
        }

        return nearest;
    }

    // A unit compiled with its site was judged there already; a finding released then, or a site of another kind beside it, shows here once more.
    private static IEnumerable<Diagnostic> SiteRules(IReadOnlyList<StandingUnit> standing)
    {
        Site[] sites = [.. standing.Select(unit => unit.Unit.Site).OfType<Site>().Distinct()];
        if (sites.Length == 0)
        {
            yield return YardFindings.SiteUnknown.At("no unit of the order names a site, so water over the units was not judged", "name a site in the unit's file", Plan);
        }

        if (sites.Length > 1)
        {
            yield return YardFindings.SitesDiffer.At(
                $"one plan, but the units name {sites.Length} sites: {string.Join(", ", sites.Select(site => site.Name))}", "order them apart, or name one site in all", Plan);
        }

        foreach (IGrouping<(Site?, double), StandingUnit> alike in standing.GroupBy(unit => (unit.Unit.Site, unit.Unit.Size.Z)))
        {
            StandingUnit unit = alike.First();
            int others = alike.Count() - 1;
            string also = others > 0 ? $" (and {others} more as high)" : "";
            if (unit.Unit.Site is { Clearance: { } least } && WaterOver(unit) is { } over && over < least.Metres)
            {
                yield return YardFindings.WaterBelow.At(
                    $"{unit.Unit.Mark}{also} leaves {over:0.00} m of water over it at low water, {least.Metres:0.00} m were asked for", "set it deeper or make it lower", Plan);
            }

            if (unit.Unit.Site is { Permit.HeightShare: { } share } site && unit.Unit.Size.Z > share * LowDepth(site))
            {
                yield return YardFindings.WaterBelow.At(
                    $"{unit.Unit.Mark}{also} is {unit.Unit.Size.Z:0.00} m high, the permit allows {share * LowDepth(site):0.00} m at low water", "set it deeper or make it lower", Plan);
            }
        }

        foreach (Site site in sites.Where(site => site.Permit?.LeastDepth is { } least && LowDepth(site) < least.Metres))
        {
            yield return YardFindings.WaterBelow.At(
                $"{site.Name} has {LowDepth(site):0.00} m of water at low water, the permit asks for {site.Permit!.LeastDepth!.Value.Metres:0.00} m", "choose a deeper site", Plan);
        }
    }

    /// <summary>Water over a unit at low water.</summary>
    /// <param name="unit">The unit.</param>
    /// <returns>m, negative where it stands out; null without a site.</returns>
    public static double? WaterOver(StandingUnit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return unit.Unit.Site is { } site ? LowDepth(site) - unit.Unit.Size.Z : null;
    }

    private static double LowDepth(Site site) => site.Water.Depth.Metres + site.Water.Low.Metres;
}
