using System.Text.Json;

namespace Dewstone.Reading.Binding;

/// <summary>Writes the JSON Schema of a table of keys.</summary>
internal static class TableSchema
{
    private static readonly string[] FirstKeys = ["kind", "version"];

    /// <summary>Writes the members of the schema object.</summary>
    /// <param name="table">Table.</param>
    /// <param name="json">Writer, inside the schema object.</param>
    /// <param name="kind">Value of the first key <c>kind</c> of a whole file; null for a table inside one.</param>
    public static void Write(ITable table, Utf8JsonWriter json, string? kind = null)
    {
        json.WriteString("type", "object");
        json.WriteBoolean("additionalProperties", false);
        json.WriteStartObject("properties");
        if (kind is not null)
        {
            WriteConstants(json, kind);
        }

        foreach (Key key in table.Keys)
        {
            json.WriteStartObject(key.Name);
            json.WriteString("description", Describe(key));
            key.Form.WriteSchema(json);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        WriteRequired(json, [.. kind is null ? [] : FirstKeys, .. table.CommonKeys.Where(key => key.Required).Select(key => key.Name)]);
        if (table.Ways.Count > 0)
        {
            WriteWays(table, json);
        }
    }

    private static void WriteConstants(Utf8JsonWriter json, string kind)
    {
        json.WriteStartObject("kind");
        json.WriteString("description", "which kind of description this is");
        json.WriteString("const", kind);
        json.WriteEndObject();
        json.WriteStartObject("version");
        json.WriteString("description", "how the file is to be understood");
        json.WriteNumber("const", 1);
        json.WriteEndObject();
    }

    private static string Describe(Key key)
    {
        string fallback = key.Fallback is null ? "" : $"; default {key.Fallback}";
        return $"{key.Doc}; {key.Form.InWords}{fallback}. Example: {key.Example}";
    }

    private static void WriteRequired(Utf8JsonWriter json, IReadOnlyCollection<string> names)
    {
        if (names.Count == 0)
        {
            return;
        }

        json.WriteStartArray("required");
        foreach (string name in names)
        {
            json.WriteStringValue(name);
        }

        json.WriteEndArray();
    }

    private static void WriteWays(ITable table, Utf8JsonWriter json)
    {
        json.WriteStartArray("oneOf");
        foreach (Way way in table.Ways)
        {
            json.WriteStartObject();
            json.WriteStartObject("properties");
            if (way.Selector is not null)
            {
                json.WriteStartObject(way.Selector.Name);
                json.WriteString("const", way.Word);
                json.WriteEndObject();
            }

            foreach (Key key in table.Ways.SelectMany(other => other.Keys).Distinct().Where(key => !way.Keys.Contains(key)))
            {
                json.WriteBoolean(key.Name, false);
            }

            json.WriteEndObject();
            WriteRequired(json, [.. way.Keys.Where(key => key.Required).Select(key => key.Name)]);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
