using System.Text.Json;
using Dewstone.Cli.Commands;
using Dewstone.Compute.Seabed;
using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Cli.Rendering;

/// <summary>The one JSON document of <c>compile --json</c> and <c>check --json</c>; its schema is <c>schemas/check.schema.json</c>.</summary>
internal static class OutcomeJson
{
    /// <summary>The document.</summary>
    /// <param name="command">compile or check.</param>
    /// <param name="outcomes">One a unit, in the order asked for.</param>
    /// <param name="exitCode">What the program ends with.</param>
    /// <returns>Indented JSON with a line feed at its end.</returns>
    public static string Of(string command, IReadOnlyList<UnitOutcome> outcomes, int exitCode) => JsonText.Of(command, exitCode, json =>
    {
        json.WriteStartArray("units");
        foreach (UnitOutcome outcome in outcomes)
        {
            WriteUnit(json, outcome);
        }

        json.WriteEndArray();
    });

    private static void WriteUnit(Utf8JsonWriter json, UnitOutcome outcome)
    {
        json.WriteStartObject();
        json.WriteString("file", outcome.File);
        json.WriteString("name", outcome.Name);
        json.WriteNumber("exit_code", outcome.ExitCode);
        json.WriteBoolean("held", outcome.Job is { Held: true });
        json.WriteString("folder", outcome.Folder);
        FindingJson.Write(json, outcome.Findings);
        json.WriteStartArray("requirements");
        foreach (RequirementResult requirement in outcome.Job?.Requirements ?? [])
        {
            WriteRequirement(json, requirement);
        }

        json.WriteEndArray();
        if (outcome.Job is { } job)
        {
            WriteFigures(json, job);
            ReportedFigures.Write(json, job);
            json.WriteStartArray("elsewhere");
            foreach (SeabedResult other in outcome.Elsewhere)
            {
                WriteElsewhere(json, other);
            }

            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    /// <summary>Writes a requirement into the array that is open.</summary>
    internal static void WriteRequirement(Utf8JsonWriter json, RequirementResult r)
    {
        json.WriteStartObject();
        json.WriteString("id", r.Id);
        json.WriteString("feature", r.Feature);
        json.WriteString("file", r.Location?.File);
        json.WriteNumber("line", r.Location?.Line ?? 0);
        json.WriteString("quantity", r.Quantity);
        json.WriteString("op", r.Op);
        json.WriteNumber("limit", SignificantFigures.Six(r.Limit));
        json.WriteNumber("value", SignificantFigures.Six(r.Value));
        json.WriteNumber("margin", SignificantFigures.Six(r.Margin));
        json.WriteString("unit", r.Unit);
        json.WriteBoolean("met", r.Met);
        json.WriteString("accepted", r.AcceptedBecause);
        json.WriteEndObject();
    }

    private static void WriteElsewhere(Utf8JsonWriter json, SeabedResult other)
    {
        json.WriteStartObject();
        FindingJson.Write(json, other.Findings);
        json.WriteStartArray("requirements");
        foreach (RequirementResult requirement in other.Requirements)
        {
            WriteRequirement(json, requirement);
        }

        json.WriteEndArray();
        if (other.Report is { } report)
        {
            json.WriteStartObject("sea");
            SeaJson.Write(json, report);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void WriteFigures(Utf8JsonWriter json, CompiledJob job)
    {
        json.WriteStartObject("figures");
        json.WriteNumber("layers", job.Lattice.Layers);
        json.WriteNumber("doses", job.Doses.CentiMillilitres.Count(d => d > 0));
        json.WriteNumber("water_l", SignificantFigures.Six(job.Estimate.WaterCubicMetres * 1000.0));
        json.WriteNumber("hardened_m3", SignificantFigures.Six(job.Solid.HardenedCubicMetres));
        if (job.Inspection is { } inspection)
        {
            json.WriteNumber("surface_m3", SignificantFigures.Six(inspection.ShapeMatch.SurfaceCubicMetres));
        }

        json.WriteNumber("target_m3", SignificantFigures.Six(job.Solid.TargetCubicMetres));
        json.WriteNumber("shape_match", SignificantFigures.Six(job.Solid.ShapeMatch));
        json.WriteNumber("mean_water_cement", SignificantFigures.Six(job.Solid.MeanWaterCement));
        json.WriteNumber("lift_kg", SignificantFigures.Six(job.Estimate.LiftKilograms));
        json.WriteNumber("mix_spread_kg", SignificantFigures.Six(job.Estimate.SpreadKilograms));
        json.WriteNumber("print_s", SignificantFigures.Six(job.Estimate.PrintSeconds));
        json.WriteEndObject();
        json.WriteStartObject("dosing");
        DosingJson.Write(json, job.Dosing);
        json.WriteEndObject();
        if (job.Strength is { } strength)
        {
            StrengthJson.Write(json, strength);
        }

        if (job.Trials is { } trials)
        {
            json.WriteStartObject("trials");
            TrialsJson.Write(json, trials);
            json.WriteEndObject();
        }
    }
}
