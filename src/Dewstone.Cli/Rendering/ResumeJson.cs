using System.Text.Json;
using Dewstone.Cli.Commands;
using Dewstone.Jobs.Resuming;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Cli.Rendering;

/// <summary>The JSON document of <c>resume --json</c>; its schema is <c>schemas/resume.schema.json</c>.</summary>
internal static class ResumeJson
{
    private const double LitresPerCubicMetre = 1000.0;

    /// <summary>The document.</summary>
    /// <param name="outcome">What came of it.</param>
    /// <returns>Indented JSON with a line feed at its end.</returns>
    public static string Of(ResumeOutcome outcome) => JsonText.Of("resume", outcome.ExitCode, json =>
    {
        json.WriteString("job", outcome.Job);
        json.WriteString("answer", outcome.Result?.Job is not { } made ? "input_at_fault" : made.Held ? "scrap" : "go_on");
        json.WriteString("folder", outcome.Folder);
        FindingJson.Write(json, outcome.Findings);
        if (outcome.Result is { Job: { } job, Joint: { } joint } result)
        {
            Write(json, joint);
            json.WriteString("doses", result.Rest is { Redosed: true } ? "found_anew" : "as_tabled");
            json.WriteStartArray("requirements");
            foreach (RequirementResult requirement in job.Requirements)
            {
                OutcomeJson.WriteRequirement(json, requirement);
            }

            json.WriteEndArray();
        }
    });

    private static void Write(Utf8JsonWriter json, JointReport joint)
    {
        json.WriteStartObject("joint");
        json.WriteNumber("lower_layer", joint.LowerLayer);
        json.WriteNumber("upper_layer", joint.UpperLayer);
        json.WriteNumber("age_s", SignificantFigures.Six(joint.AgeSeconds));
        json.WriteNumber("window_s", SignificantFigures.Six(joint.WindowSeconds));
        json.WriteNumber("unset_in_one_go_l", SignificantFigures.Six(joint.UnsetInOneGoCubicMetres * LitresPerCubicMetre));
        json.WriteNumber("unset_l", SignificantFigures.Six(joint.UnsetCubicMetres * LitresPerCubicMetre));
        json.WriteNumber("shape_match_in_one_go", SignificantFigures.Six(joint.ShapeMatchInOneGo));
        json.WriteNumber("shape_match", SignificantFigures.Six(joint.ShapeMatch));
        json.WriteEndObject();
    }
}
