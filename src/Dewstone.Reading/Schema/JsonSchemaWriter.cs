using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Binding;

namespace Dewstone.Reading.Schema;

/// <summary>Writes the JSON Schema (draft 2020-12) of a kind of description, from its key table.</summary>
public static class JsonSchemaWriter
{
    /// <summary>
    /// The schema by which editors check and complete a description. It holds what a schema can hold: keys, words, ranges of bare numbers
    /// and units of measure; ranges of quantities and rules over several keys are the reader's.
    /// </summary>
    /// <param name="kind">Kind of description.</param>
    /// <returns>JSON, indented by two spaces, with a final line feed; the same on every run.</returns>
    public static string Write(DescriptionKind kind)
    {
        using MemoryStream buffer = new();
        JsonWriterOptions options =
            new() { Indented = true, IndentSize = 2, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        using (Utf8JsonWriter json = new(buffer, options))
        {
            ITable table = DescriptionTables.For(kind);
            json.WriteStartObject();
            json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
            json.WriteString("title", $"Dewstone: {table.InWords}");
            TableSchema.Write(table, json, DescriptionTables.Word(kind));
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.GetBuffer(), 0, (int)buffer.Length) + "\n";
    }
}
