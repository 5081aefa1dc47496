using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Seabed;

/// <summary>Holds a unit's stand against what its site asks.</summary>
internal static class SeabedCheck
{
    /// <summary>Sinkage over the unit's height from which it is told, 1; a rule of ours.</summary>
    private const double ToldSinkage = 0.05;

    /// <summary>Judges.</summary>
    /// <param name="site">What is asked.</param>
    /// <param name="report">How it stands.</param>
    /// <returns>Report, requirements and findings.</returns>
    public static SeabedResult Judge(Site site, StabilityReport report)
    {
        List<RequirementResult> results = [];
        List<Diagnostic> findings = [];
        JudgeFactors(site, report, results, findings);
        JudgeWater(site, report, results, findings);
        Warn(site, report, findings);
        return new SeabedResult(report, results, findings);
    }

    private static void JudgeFactors(Site site, StabilityReport report, List<RequirementResult> results, List<Diagnostic> findings)
    {
        string least = report.LeastSaturatedKilograms is { } kilograms ? $"at {kilograms:0} kg this shape would stand; " : "no mass of this shape would stand; ";
        RequirementResult sliding = Add(
            results, RequirementIds.Sliding, "safety.sliding", "factor of safety against sliding, worst heading", ">=", site.Safety.Sliding, report.Sliding, "1");
        if (!sliding.Met)
        {
            findings.Add(SeaFindings.SlidingBelow.At(
                $"at {site.Name} it slides: factor of safety {sliding.Value:0.00}, {sliding.Limit:0.00} asked, at heading {report.Headings.MinBy(h => h.Sliding)!.HeadingDegrees:0} deg",
                least + "make it heavier, lower or wider, turn it, or choose a calmer site", sliding.Key));
        }

        RequirementResult overturning = Add(
            results, RequirementIds.Overturning, "safety.overturning", "factor of safety against overturning, worst heading", ">=", site.Safety.Overturning,
            report.Overturning, "1");
        if (!overturning.Met)
        {
            findings.Add(SeaFindings.OverturningBelow.At(
                $"at {site.Name} it turns over: factor of safety {overturning.Value:0.00}, {overturning.Limit:0.00} asked, at heading {report.Headings.MinBy(h => h.Overturning)!.HeadingDegrees:0} deg",
                least + "widen its foot, make it lower or heavier, or choose a calmer site", overturning.Key));
        }

        if (report.Bearing is not { } bearing)
        {
            findings.Add(SeaFindings.BearingUnknown.At(
                "whether the seabed bears it is not judged: the soil's strength is not given", "give seabed.friction_angle of sand or seabed.undrained_strength of clay",
                new KeyPath(DescriptionKind.Site, "seabed")));
            return;
        }

        RequirementResult bears = Add(
            results, RequirementIds.Bearing, "safety.bearing", "factor of safety against failure of the seabed", ">=", site.Safety.Bearing, bearing.Factor, "1");
        if (!bears.Met)
        {
            findings.Add(SeaFindings.BearingBelow.At(
                $"the seabed at {site.Name} gives way: factor of safety {bears.Value:0.00} ({bearing.Method}), {bears.Limit:0.00} asked, under {bearing.PressurePascals / 1000.0:0.0} kPa",
                "widen its foot, make it lighter, lay stone under it, or choose firmer ground", bears.Key));
        }
    }

    private static void JudgeWater(Site site, StabilityReport report, List<RequirementResult> results, List<Diagnostic> findings)
    {
        double depth = SeabedSolver.Depths(site).Min(level => level.DepthMetres), height = report.Body.HeightMetres;
        if (site.Clearance is { } clearance)
        {
            RequirementResult over = Add(results, RequirementIds.Clearance, "clearance", "water over the unit at low water", ">=", clearance.Metres, depth - height, "m");
            if (!over.Met)
            {
                findings.Add(SeaFindings.ClearanceBelow.At(
                    $"{over.Value:0.00} m of water over it at low water; {over.Limit:0.00} m is asked", "make it lower, or place it deeper", over.Key));
            }
        }

        if (site.Permit is not { } permit)
        {
            return;
        }

        if (permit.HeightShare is { } share)
        {
            RequirementResult part = Add(
                results, RequirementIds.HeightShare, "permit.height_share", "height over the depth at low water", "<=", share, height / Math.Max(depth, 1e-3), "1");
            if (!part.Met)
            {
                findings.Add(SeaFindings.HeightAbove.At(
                    $"{height:0.00} m high in {depth:0.00} m at low water: {100.0 * part.Value:0} %; at most {100.0 * share:0} % is allowed{Source(permit)}",
                    "make it lower, or place it deeper", part.Key));
            }
        }

        if (permit.LeastDepth is { } leastDepth)
        {
            RequirementResult deep = Add(results, RequirementIds.LeastDepth, "permit.least_depth", "depth at low water", ">=", leastDepth.Metres, depth, "m");
            if (!deep.Met)
            {
                findings.Add(SeaFindings.TooShallow.At(
                    $"{depth:0.00} m deep at low water; units may stand from {leastDepth.Metres:0.00} m on{Source(permit)}", "choose a deeper site", deep.Key));
            }
        }
    }

    private static void Warn(Site site, StabilityReport report, List<Diagnostic> findings)
    {
        foreach ((string name, double depth) in SeabedSolver.Depths(site))
        {
            if (report.Levels.FirstOrDefault(level => level.Name == name) is not { } level)
            {
                findings.Add(SeaFindings.DryLevel.At(
                    $"no sea to judge by at {name} water: {depth:0.##} m", "nothing, when it is meant to fall dry there", Site($"water.{name}")));
                continue;
            }

            if (level.Breaks)
            {
                findings.Add(SeaFindings.WavesBreak.At(
                    $"waves of {level.AskedMetres:0.00} m break at {name} water; {level.HeightMetres:0.00} m is used, and breaking waves hit harder than that",
                    "let a licensed engineer judge it, or place it deeper", Site("wave.significant_height")));
            }

            if (level.CoverMetres < 0.0)
            {
                findings.Add(SeaFindings.StandsOut.At(
                    $"it stands {-level.CoverMetres:0.00} m out of the water at {name} water, where waves slam it: that is not in the factors of safety",
                    "let a licensed engineer judge it, make it lower, or place it deeper", Site("water.depth")));
            }
        }

        if ((report.FreshSliding < site.Safety.Sliding && report.Sliding >= site.Safety.Sliding) ||
            (report.FreshOverturning < site.Safety.Overturning && report.Overturning >= site.Safety.Overturning))
        {
            findings.Add(SeaFindings.FreshUnstable.At(
                $"before its pores fill its factors are {report.FreshSliding:0.00} against sliding and {report.FreshOverturning:0.00} against overturning",
                "soak it before it is lowered, or lower it in a calm season", Site("safety")));
        }

        if (report.Bearing is { } bearing && bearing.SinkageMetres > ToldSinkage * report.Body.HeightMetres)
        {
            findings.Add(SeaFindings.Sinks.At(
                $"it sinks about {bearing.SinkageMetres * 1000.0:0} mm into the seabed, of {report.Body.HeightMetres * 1000.0:0} mm",
                "widen its foot or lay stone under it", Site("seabed")));
        }

        if (report.Scour is { Moves: true } scour)
        {
            findings.Add(SeaFindings.SandMoves.At(
                $"the design sea moves the sand there ({scour.StressPascals:0.0} Pa, grains move from {scour.ThresholdPascals:0.00} Pa): it may scour under the unit",
                "lay stone or mattress around it, or watch it", Site("seabed.grain")));
        }
        else if (report.Scour is null && site.Seabed.Soil == SoilKind.Sand)
        {
            findings.Add(SeaFindings.GrainMissing.At("whether the sea moves the sand is not judged: no grain size", "give seabed.grain", Site("seabed")));
        }
    }

    private static KeyPath Site(string key) => new(DescriptionKind.Site, key);

    private static string Source(PermitRules permit) => permit.Source.Length == 0 ? "" : $" ({permit.Source})";

    private static RequirementResult Add(
        List<RequirementResult> results, string id, string key, string quantity, string op, double limit, double value, string unit)
    {
        RequirementResult result = new() { Id = id, Key = Site(key), Quantity = quantity, Op = op, Limit = limit, Value = value, Unit = unit };
        results.Add(result);
        return result;
    }
}
