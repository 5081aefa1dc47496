using System.Text.Json;
using Dewstone.Cli.Commands;
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
            json.WriteNumber("lost_l", SignificantFigures.Six(layer.LostLitres));
            json.WriteNumber("gained_l", SignificantFigures.Six(layer.GainedLitres));
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

    private static void Pair(Utf8JsonWriter json, string name, double planned, double asRun)
    {
        json.WriteStartObject(name);
        json.WriteNumber("planned", SignificantFigures.Six(planned));
        json.WriteNumber("as_run", SignificantFigures.Six(asRun));
        json.WriteEndObject();
    }
}
