using Dewstone.Compute.Strength;
using Dewstone.Model.Quantities;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>How strong the unit is by age, where it comes nearest to cracking, how it stands to the codes for sea water.</summary>
internal static class StrengthSection
{
    /// <summary>Writes the part.</summary>
    /// <param name="html">The page.</param>
    /// <param name="subject">The job.</param>
    public static void Write(HtmlWriter html, ReportSubject subject)
    {
        if (subject.Job.Strength is not { } strength)
        {
            html.Add($"<p>Strength was not reckoned: see the findings.</p>");
            return;
        }

        html.Add($"<p>Predicted by {StrengthWords.Rule(strength.Rule)}{(strength.RuleAssumed ? " (the mix says nothing of strength: assumed)" : "")}, cement class {strength.CementClass}, cured at {ReportFigures.Degrees(new Temperature(strength.CuringCelsius))}, where a day counts as {ReportFigures.Amount(strength.AgeRate)} days at 20 °C. Break cubes cut from the same bed before you trust it.</p>");
        html.Add($"""<div class="charts">""");
        ReportTable.Write(html, "Strength by age", ["age", "#at 20 °C as old as", "#mean", "#5 % are weaker than"], strength.Ages.Select(age => (string[])
            [$"{age.Days:0}\u00a0d", $"{age.EquivalentDays:0.0} d", StrengthWords.Stress(age.MeanPascals), StrengthWords.Stress(age.WeakPascals)]));
        ReportTable.Write(html, "Strength at 28 days of 20 °C", ["share of the hardened volume", "#strength"],
        [
            ["5 % are weaker than", StrengthWords.Stress(strength.Percentiles.P5)],
            ["half are weaker than", StrengthWords.Stress(strength.Percentiles.P50)],
            ["95 % are weaker than", StrengthWords.Stress(strength.Percentiles.P95)],
            ["mean", StrengthWords.Stress(strength.MeanPascals)],
        ]);
        if (strength.Paste is { } paste)
        {
            ReportTable.Write(html, "The paste at 28 days of 20 °C, mean water/cement, sealed", ["part of its volume", "#share"],
            [
                ["cement not hydrated", ReportFigures.Share(paste.UnhydratedCement)],
                ["gel: solids", ReportFigures.Share(paste.GelSolids)],
                ["gel: water in it", ReportFigures.Share(paste.GelWater)],
                ["capillary pores with water: what lets the sea in", ReportFigures.Share(paste.CapillaryWater)],
                ["pores emptied by chemical shrinkage", ReportFigures.Share(paste.Shrinkage)],
            ]);
        }

        html.Add($"</div>");
        html.Add($"<p>Heat: at most {ReportFigures.Plain(Math.Round(strength.HeatRiseKelvin))} K warmer within three days of 20 °C, if a plain Portland cement's heat all stayed in; the loose mix around it keeps much of it. Do not clear a warm unit in cold wind: a skin more than about 20 K colder than the core may crack (common practice, no source).</p>");
        if (strength.Tension.Count > 0)
        {
            ReportTable.Write(
                html, "Tension under its own weight, where it comes nearest to cracking",
                ["held", "#tension", "#cracks at 28 d at", "#factor 28 d", "#factor when lifted first", "at, in the unit"],
                strength.Tension.Select(held => (string[])
                [
                    LoadCaseWords.Of(held.Case), StrengthWords.Stress(held.TensionPascals), StrengthWords.Stress(held.CrackingPascals),
                    ReportFigures.Amount(held.Factor), ReportFigures.Amount(held.FactorAtLift), ReportFigures.Place(held.Where) + (held.Overturns ? "; does not stay on them" : ""),
                ]));
            html.Add($"<p>By finite elements, {strength.Bricks} bricks along the longest side: largest principal tension as its mean over a ball one pitch across. A factor of 1.5 is asked. Blows, friction, shrinkage and the sideways pull of the slings are not in it.</p>");
            BodyDrawing.Write(html, strength.Map, strength.Tension[0]);
        }

        ReportTable.Write(html, "Limits for concrete in sea water: notes, not requirements", ["rule", "for", "#water/cement at most", "#strength at least", "#cement at least", "this unit", "binds"],
            strength.Exposure.Select(verdict => (string[])
            [
                verdict.Rule.Name, verdict.Rule.Exposure, $"{verdict.Rule.MostWaterCement:0.00}", StrengthWords.Stress(verdict.Rule.LeastPascals),
                verdict.Rule.LeastCement is { } cement ? $"{cement:0} kg/m³" : "–", verdict.Met ? "keeps it" : "does not", verdict.Rule.ForSteel ? "only with steel in it" : "where the code is law",
            ]));
        html.Add($"<p>EN 206 strengths are of cubes. A unit without steel has nothing that rusts: rows that guard steel are told for comparison. Never put steel into a unit that does not keep them.</p>");
    }
}
