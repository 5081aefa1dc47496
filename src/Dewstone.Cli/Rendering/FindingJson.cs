using System.Text.Json;
using Dewstone.Jobs.Emission;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Cli.Rendering;

/// <summary>Findings as every <c>--json</c> document holds them.</summary>
internal static class FindingJson
{
    /// <summary>Writes a member <c>findings</c>.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="findings">The findings.</param>
    public static void Write(Utf8JsonWriter json, IReadOnlyList<Diagnostic> findings)
    {
        json.WriteStartArray("findings");
        foreach (Diagnostic finding in findings)
        {
            json.WriteStartObject();
            json.WriteString("code", finding.Code);
            json.WriteString("level", ExplainPage.Word(finding.Severity));
            json.WriteString("message", finding.Message);
            json.WriteString("remedy", finding.Remedy);
            json.WriteString("file", finding.Location?.File);
            json.WriteNumber("line", finding.Location?.Line ?? 0);
            json.WriteNumber("column", finding.Location?.Column ?? 0);
            json.WriteString("key", finding.Key is { Path.Length: > 0 } key ? key.Path : null);
            json.WriteString("accepted", finding.AcceptedBecause);
            json.WritePropertyName("unit_frame_mm");
            JsonSerializer.Serialize(json, finding.Where is { } where ? FindingsEmitter.Millimetres(where) : null);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
