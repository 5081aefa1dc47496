using System.Text;
using System.Text.Json;
using Dewstone.Cli.Commands;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Cli.Rendering;

/// <summary>The one JSON document of <c>compile --json</c> and <c>check --json</c>; its schema is <c>schemas/check.schema.json</c>.</summary>
internal static class OutcomeJson
{
    /// <summary>Version of the document; rises when a field goes or changes meaning.</summary>
    public const int Version = 1;

    /// <summary>The document.</summary>
    /// <param name="command">compile or check.</param>
    /// <param name="outcomes">One a unit, in the order asked for.</param>
    /// <param name="exitCode">What the program ends with.</param>
    /// <returns>Indented JSON with a line feed at its end.</returns>
    public static string Of(string command, IReadOnlyList<UnitOutcome> outcomes, int exitCode)
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            json.WriteStartObject();
            json.WriteString("format", $"dewstone-{command}");
            json.WriteNumber("version", Version);
            json.WriteString("tool", ToolVersion.Text);
            json.WriteNumber("exit_code", exitCode);
            json.WriteStartArray("units");
            foreach (UnitOutcome outcome in outcomes)
            {
                WriteUnit(json, outcome);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static void WriteUnit(Utf8JsonWriter json, UnitOutcome outcome)
    {
        json.WriteStartObject();
        json.WriteString("file", outcome.File);
        json.WriteString("name", outcome.Name);
        json.WriteNumber("exit_code", outcome.ExitCode);
        json.WriteBoolean("held", outcome.Job is { Held: true });
        WriteOptional(json, "folder", outcome.Folder);
        json.WriteStartArray("findings");
        foreach (Diagnostic finding in outcome.Findings)
        {
            WriteFinding(json, finding);
        }

        json.WriteEndArray();
        json.WriteStartArray("requirements");
        foreach (RequirementResult requirement in outcome.Job?.Requirements ?? [])
        {
            WriteRequirement(json, requirement);
        }

        json.WriteEndArray();
        if (outcome.Job is { } job)
        {
            WriteFigures(json, job);
        }

        json.WriteEndObject();
    }

    /// <summary>Writes a finding, as every JSON document of the program does.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="finding">The finding.</param>
    internal static void WriteFinding(Utf8JsonWriter json, Diagnostic finding)
    {
        json.WriteStartObject();
        json.WriteString("code", finding.Code);
        json.WriteString("level", ExplainPage.Word(finding.Severity));
        json.WriteString("message", finding.Message);
        json.WriteString("remedy", finding.Remedy);
        WriteOptional(json, "file", finding.Location?.File);
        json.WriteNumber("line", finding.Location?.Line ?? 0);
        json.WriteNumber("column", finding.Location?.Column ?? 0);
        WriteOptional(json, "key", finding.Key is { Path.Length: > 0 } key ? key.Path : null);
        WriteOptional(json, "accepted", finding.AcceptedBecause);
        json.WriteEndObject();
    }

    private static void WriteRequirement(Utf8JsonWriter json, RequirementResult r)
    {
        json.WriteStartObject();
        json.WriteString("id", r.Id);
        json.WriteString("feature", r.Feature);
        WriteOptional(json, "file", r.Location?.File);
        json.WriteNumber("line", r.Location?.Line ?? 0);
        json.WriteString("quantity", r.Quantity);
        json.WriteString("op", r.Op);
        json.WriteNumber("limit", SignificantFigures.Six(r.Limit));
        json.WriteNumber("value", SignificantFigures.Six(r.Value));
        json.WriteNumber("margin", SignificantFigures.Six(r.Margin));
        json.WriteString("unit", r.Unit);
        json.WriteBoolean("met", r.Met);
        WriteOptional(json, "accepted", r.AcceptedBecause);
        json.WriteEndObject();
    }

    private static void WriteFigures(Utf8JsonWriter json, CompiledJob job)
    {
        json.WriteStartObject("figures");
        json.WriteNumber("layers", job.Lattice.Layers);
        json.WriteNumber("doses", job.Doses.CentiMillilitres.Count(d => d > 0));
        json.WriteNumber("water_l", SignificantFigures.Six(job.Estimate.WaterCubicMetres * 1000.0));
        json.WriteNumber("hardened_m3", SignificantFigures.Six(job.Solid.HardenedCubicMetres));
        json.WriteNumber("target_m3", SignificantFigures.Six(job.Solid.TargetCubicMetres));
        json.WriteNumber("shape_match", SignificantFigures.Six(job.Solid.ShapeMatch));
        json.WriteNumber("mean_water_cement", SignificantFigures.Six(job.Solid.MeanWaterCement));
        json.WriteNumber("lift_kg", SignificantFigures.Six(job.Estimate.LiftKilograms));
        json.WriteNumber("mix_spread_kg", SignificantFigures.Six(job.Estimate.SpreadKilograms));
        json.WriteNumber("print_s", SignificantFigures.Six(job.Estimate.PrintSeconds));
        json.WriteEndObject();
    }

    private static void WriteOptional(Utf8JsonWriter json, string name, string? value)
    {
        if (value is null)
        {
            json.WriteNull(name);
        }
        else
        {
            json.WriteString(name, value);
        }
    }
}
