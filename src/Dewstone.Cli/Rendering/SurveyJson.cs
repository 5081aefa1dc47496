using System.Text.Json;
using Dewstone.Cli.Commands;
using Dewstone.Compute.Survey;
using Dewstone.Jobs.Surveys;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Cli.Rendering;

/// <summary>The JSON document of <c>survey --json</c>; its schema is <c>schemas/survey.schema.json</c>.</summary>
internal static class SurveyJson
{
    /// <summary>The document.</summary>
    /// <param name="outcome">What came of it.</param>
    /// <returns>Indented JSON with a line feed at its end.</returns>
    public static string Of(SurveyOutcome outcome) => JsonText.Of("survey", outcome.ExitCode, json =>
    {
        json.WriteString("job", outcome.Job);
        json.WriteString("verdict", outcome.Result?.Verdict switch { null => "input_at_fault", Verdict.Release => "release", Verdict.Hold => "hold", _ => "scrap" });
        json.WriteString("folder", outcome.Folder);
        FindingJson.Write(json, outcome.Findings);
        if (outcome.Result?.Run is { } run)
        {
            Write(json, run);
        }

        if (outcome.Result?.Weights is { } weights)
        {
            Write(json, weights);
        }

        if (outcome.Result?.Gauges is { Count: > 0 } gauges)
        {
            Write(json, gauges);
        }

        if (outcome.Result?.Scan is { } scan)
        {
            ScanJson.Write(json, scan);
        }
    });

    private static void Write(Utf8JsonWriter json, RunSurveyResult run)
    {
        json.WriteStartObject("run");
        json.WriteNumber("planned_doses", run.Log.PlannedDoses);
        json.WriteNumber("given_doses", run.Log.GivenDoses);
        json.WriteBoolean("finished", run.Log.IsFinished);
        json.WriteString("times", run.Log.Schedule is null ? "as_planned" : "as_run");
        Pair(json, "shape_match", run.Planned.ShapeMatch, run.AsRun.ShapeMatch);
        Pair(json, "hardened_m3", run.Planned.HardenedCubicMetres, run.AsRun.HardenedCubicMetres);
        Pair(json, "lift_kg", run.PlannedKilograms, run.AsRunKilograms);
        json.WriteStartArray("layers");
        foreach (LayerChange layer in run.Layers)
        {
            json.WriteStartObject();
            json.WriteNumber("layer", layer.Layer);
            Number(json, "lost_l", layer.LostLitres);
            Number(json, "gained_l", layer.GainedLitres);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("requirements");
        foreach (RequirementResult requirement in run.RequirementsAsRun)
        {
            OutcomeJson.WriteRequirement(json, requirement);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, WeightsReport weights)
    {
        ControlChart chart = weights.Chart;
        json.WriteStartObject("weights");
        json.WriteNumber("units", chart.Values.Count);
        Number(json, "predicted_kg", weights.PredictedKilograms);
        Number(json, "mean_kg", chart.Mean);
        Number(json, "mean_half_width_kg", weights.MeanHalfWidthKilograms);
        Number(json, "mean_moving_range_kg", chart.MeanMovingRange);
        Number(json, "lower_limit_kg", chart.Lower);
        Number(json, "upper_limit_kg", chart.Upper);
        Number(json, "moving_range_limit_kg", chart.RangeUpper);
        Number(json, "drift_kg", weights.DriftKilograms);
        Number(json, "drift_half_width_kg", weights.DriftHalfWidthKilograms);
        Number(json, "explaining_loose_density_kg_m3", weights.ExplainingLooseKilogramsPerCubicMetre);
        Number(json, "explaining_dose_change", weights.ExplainingDoseChange);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, IReadOnlyList<GaugedPlace> gauges)
    {
        json.WriteStartArray("gauges");
        foreach (GaugedPlace place in gauges)
        {
            json.WriteStartObject();
            json.WriteString("name", place.Reading.Name);
            json.WriteString("kind", place.Reading.Kind == GaugeKind.Wall ? "wall" : "opening");
            Number(json, "reading_m", place.Reading.Metres);
            Number(json, "predicted_m", place.PredictedMetres);
            Number(json, "required_m", place.RequiredMetres);
            Number(json, "tolerance_m", place.ToleranceMetres);
            json.WriteBoolean("met", place.IsMet);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>A figure of six digits, or null.</summary>
    internal static void Number(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number)
        {
            json.WriteNumber(name, SignificantFigures.Six(number));
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private static void Pair(Utf8JsonWriter json, string name, double planned, double asRun)
    {
        json.WriteStartObject(name);
        Number(json, "planned", planned);
        Number(json, "as_run", asRun);
        json.WriteEndObject();
    }
}
