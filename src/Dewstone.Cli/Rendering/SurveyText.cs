using System.Text;
using Dewstone.Cli.Commands;
using Dewstone.Compute.Survey;
using Dewstone.Jobs.Surveys;
using Dewstone.Model.Results;

namespace Dewstone.Cli.Rendering;

/// <summary>What <c>survey</c> says: findings, what differs, requirements, release, hold or scrap.</summary>
internal static class SurveyText
{
    private const int LayersTold = 3;

    /// <summary>The text.</summary>
    /// <param name="outcome">What came of it.</param>
    /// <param name="colour">Whether to colour levels.</param>
    /// <param name="quiet">Leave out notes.</param>
    /// <returns>Plain text.</returns>
    public static string Of(SurveyOutcome outcome, bool colour, bool quiet)
    {
        StringBuilder text = new(FindingText.Of(outcome.Findings, colour, quiet));

        if (outcome.Result is not { } result)
        {
            return text.Append($"{outcome.Job}: not surveyed\n").ToString();
        }

        if (result.Run is { } run)
        {
            AddRun(text, run);
        }

        if (result.Weights is { } weights)
        {
            AddWeights(text, weights);
        }

        foreach (GaugedPlace place in result.Gauges)
        {
            string name = place.Reading.Kind == GaugeKind.Wall ? $"wall {place.Reading.Name}".TrimEnd() : place.Reading.Name;
            WordLine.Add(text, place.IsMet ? "as predicted" : "LESS", $"{name}: {1000.0 * place.Reading.Metres:0.#} mm, {1000.0 * place.PredictedMetres:0.#} mm predicted, tolerance {1000.0 * place.ToleranceMetres:0.#} mm");
        }

        if (result.Scan is { } scan)
        {
            AddScan(text, scan);
        }

        return text.Append($"{result.Name}: {WordOf(result.Verdict)}{(outcome.Folder is null ? "" : $": {outcome.Folder}")}\n").ToString();
    }

    /// <summary>A verdict in a word.</summary>
    internal static string WordOf(Verdict verdict) => verdict switch { Verdict.Release => "release", Verdict.Hold => "HOLD", _ => "SCRAP" };

    private static void AddRun(StringBuilder text, RunSurveyResult run)
    {
        WordLine.Add(text, "doses", $"{run.Log.GivenDoses} of {run.Log.PlannedDoses} given");
        WordLine.Add(text, "times", run.Log.Schedule is null ? "as planned: the log has none that can be used" : "as run");
        WordLine.Add(text, "shape match", $"{run.AsRun.ShapeMatch:0.000} as run, {run.Planned.ShapeMatch:0.000} as planned");
        WordLine.Add(text, "on the hook", $"{run.AsRunKilograms:0.#} kg as run, {run.PlannedKilograms:0.#} kg as planned");
        foreach (LayerChange layer in run.Layers.Where(l => l.Litres >= 0.005).OrderByDescending(l => l.Litres).Take(LayersTold))
        {
            WordLine.Add(text, $"layer {layer.Layer}", $"{layer.LostLitres:0.00} L stays loose that was to set, {layer.GainedLitres:0.00} L sets that was not");
        }

        foreach (RequirementResult r in run.RequirementsAsRun)
        {
            WordLine.Add(text, r.Met ? "met" : "NOT MET", WordLine.Of(r));
        }
    }

    private static void AddWeights(StringBuilder text, WeightsReport weights)
    {
        ControlChart chart = weights.Chart;
        WordLine.Add(text, "weighed", $"{chart.Values.Count} units, mean {chart.Mean:0.##} kg +- {weights.MeanHalfWidthKilograms:0.##} kg; {weights.PredictedKilograms:0.##} kg predicted");
        WordLine.Add(text, "limits", $"{chart.Lower:0.##} to {chart.Upper:0.##} kg, moving range up to {chart.RangeUpper:0.##} kg (mean {chart.MeanMovingRange:0.###} kg){(chart.Values.Count < 20 ? ", provisional below 20 units" : "")}");
        WordLine.Add(text, "drift", $"{weights.DriftKilograms:+0.##;-0.##;0} kg +- {weights.DriftHalfWidthKilograms:0.##} kg from the first to the last");
    }

    private static void AddScan(StringBuilder text, ScanSurveyResult scan)
    {
        ScanDeviation deviation = scan.Deviation;
        WordLine.Add(text, "scan", $"{deviation.Points.Count} points lie {1000.0 * scan.Registration.RootMeanSquareMetres:0.0} mm off where they fit, {100.0 * scan.Registration.NearShare:0} % within 15 mm; {deviation.Stray} left out as not of the unit");
        WordLine.Add(text, "deviation", $"mean {1000.0 * deviation.Mean:+0.0;-0.0;0.0} mm, 90 % from {1000.0 * deviation.Percentile(0.05):+0.0;-0.0;0.0} to {1000.0 * deviation.Percentile(0.95):+0.0;-0.0;0.0} mm");
        WordLine.Add(text, "volume", scan.ScannedCubicMetres is { } volume
            ? $"{1000.0 * volume:0.00} L scanned, {1000.0 * scan.PredictedCubicMetres:0.00} L predicted ({100.0 * (volume / scan.PredictedCubicMetres - 1.0):+0.0;-0.0;0.0} %)"
            : $"{1000.0 * scan.PredictedCubicMetres:0.00} L predicted; the scan is no closed surface");
        foreach (Suggestion s in scan.Suggestions)
        {
            WordLine.Add(text, "would explain", $"{s.Figure} {s.Factor:0.##} times: {1000.0 * s.BeforeMetres:0.0} to {1000.0 * s.AfterMetres:0.0} mm off on average");
        }
    }
}
