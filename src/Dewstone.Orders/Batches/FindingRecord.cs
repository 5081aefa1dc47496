using System.Text.Json;
using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Orders.Batches;

/// <summary>Findings and requirements in the files of an order: all of them, so that they can be read back and placed anew.</summary>
internal static class FindingRecord
{
    /// <summary>Writes a member with findings.</summary>
    public static void Write(Utf8JsonWriter json, string name, IReadOnlyList<Diagnostic> findings, Func<string, string> nameOfFile) => json.Objects(name, findings, finding =>
    {
        json.WriteString("code", finding.Code);
        json.WriteString("level", LevelName(finding.Severity));
        json.WriteString("message", finding.Message);
        json.WriteString("remedy", finding.Remedy);
        WriteKey(json, finding.Key);
        WritePlace(json, finding.Location, nameOfFile);
        json.Objects("related", finding.Related, related =>
        {
            json.WriteString("remark", related.Remark);
            WriteKey(json, related.Key);
            WritePlace(json, related.Location, nameOfFile);
        });
        if (finding.Where is { } where)
        {
            json.Numbers("unit_frame_m", SignificantFigures.Six(where.X), SignificantFigures.Six(where.Y), SignificantFigures.Six(where.Z));
        }

        if (finding.AcceptedBecause is { } reason)
        {
            json.WriteString("accepted", reason);
        }
    });

    /// <summary>Reads them back.</summary>
    public static IReadOnlyList<Diagnostic> Read(JsonElement list) => [.. list.EnumerateArray().Select(item => new Diagnostic
    {
        Code = item.Text("code"),
        Severity = item.Text("level") switch { "error" => Severity.Error, "warning" => Severity.Warning, _ => Severity.Note },
        Message = item.Text("message"),
        Remedy = item.Text("remedy"),
        Key = ReadKey(item),
        Location = ReadPlace(item),
        Related = [.. item.GetProperty("related").EnumerateArray().Select(related => new RelatedPlace(ReadPlace(related), ReadKey(related), related.Text("remark")))],
        Where = item.TryGetProperty("unit_frame_m", out JsonElement where) ? new Point3(where[0].GetDouble(), where[1].GetDouble(), where[2].GetDouble()) : null,
        AcceptedBecause = item.TryGetProperty("accepted", out JsonElement reason) ? reason.GetString() : null,
    })];

    /// <summary>Writes a member with requirements; their figures to six digits, or to the last bit when they are to be read back.</summary>
    public static void Write(Utf8JsonWriter json, string name, IReadOnlyList<RequirementResult> requirements, Func<string, string> nameOfFile, bool exact) => json.Objects(name, requirements, r =>
    {
        json.WriteString("id", r.Id);
        json.WriteString("feature", r.Feature);
        WriteKey(json, r.Key);
        WritePlace(json, r.Location, nameOfFile);
        json.WriteString("quantity", r.Quantity);
        json.WriteString("op", r.Op);
        json.Number("limit", exact ? r.Limit : SignificantFigures.Six(r.Limit));
        json.Number("value", exact ? r.Value : SignificantFigures.Six(r.Value));
        json.Figure("margin", r.Margin);
        json.WriteString("unit", r.Unit);
        json.WriteBoolean("met", r.Met);
        json.WriteString("accepted", r.AcceptedBecause);
    });

    /// <summary>Reads them back.</summary>
    public static IReadOnlyList<RequirementResult> ReadRequirements(JsonElement list) => [.. list.EnumerateArray().Select(item => new RequirementResult
    {
        Id = item.Text("id"),
        Feature = item.Text("feature"),
        Key = ReadKey(item)!,
        Location = ReadPlace(item),
        Quantity = item.Text("quantity"),
        Op = item.Text("op"),
        Limit = item.GetProperty("limit").GetDouble(),
        Value = item.GetProperty("value").GetDouble(),
        Unit = item.Text("unit"),
        AcceptedBecause = item.GetProperty("accepted").GetString(),
    })];

    /// <summary>A text that must be there.</summary>
    public static string Text(this JsonElement item, string name) => item.GetProperty(name).GetString() ?? throw new JsonException($"{name} is null");

    private static string LevelName(Severity severity) => severity switch { Severity.Error => "error", Severity.Warning => "warning", _ => "note" };

    private static void WriteKey(Utf8JsonWriter json, KeyPath? key)
    {
        if (key is not null)
        {
            json.WriteString("kind", key.Kind.ToString().ToLowerInvariant());
            json.WriteString("key", key.Path);
        }
    }

    private static KeyPath? ReadKey(JsonElement item) =>
        item.TryGetProperty("kind", out JsonElement kind) ? new KeyPath(Enum.Parse<DescriptionKind>(kind.GetString()!, ignoreCase: true), item.Text("key")) : null;

    private static void WritePlace(Utf8JsonWriter json, SourceLocation? place, Func<string, string> nameOfFile)
    {
        if (place is not null)
        {
            json.WriteString("file", nameOfFile(place.File));
            json.WriteNumber("line", place.Line);
            json.WriteNumber("column", place.Column);
        }
    }

    private static SourceLocation? ReadPlace(JsonElement item) =>
        item.TryGetProperty("file", out JsonElement file) ? new SourceLocation(file.GetString()!, item.GetProperty("line").GetInt32(), item.GetProperty("column").GetInt32()) : null;
}
