using System.Text.Json;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Quantities;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Binding;

/// <summary>Free text in one line. Plain numbers count as text too, so that a batch label needs no quotes.</summary>
/// <param name="inWords">What is due, with its article.</param>
/// <param name="example">A good value.</param>
/// <param name="longest">Most characters.</param>
/// <param name="allowed">Which characters; null for all that can be printed.</param>
/// <param name="pattern">The same as a regular expression for the JSON Schema; null when any will do.</param>
/// <param name="shortest">Least characters.</param>
internal sealed class TextForm(
    string inWords, string example, int longest =
        200, Func<char, bool>? allowed = null, string? pattern = null, int shortest = 1) : ScalarForm<string>
{
    /// <inheritdoc/>
    public override string InWords => inWords;

    /// <inheritdoc/>
    public override string Example => example;

    /// <inheritdoc/>
    public override TextFault? Read(string text, out string? value)
    {
        value = text;
        string? fault = string.IsNullOrWhiteSpace(text) ? "is empty"
            : text.Length < shortest ? "is too short"
            : text.Length > longest ? $"is longer than {longest} characters"
            : text.Any(c => char.IsControl(c) || (allowed is not null && !allowed(c))) ? "holds characters it must not"
            : null;
        return fault is null ? null : new TextFault(DescriptionFindings.BadText, $"\"{Quoting.Short(text)}\" {fault}",
            $"write {inWords}, as in `{example}`");
    }

    /// <inheritdoc/>
    public override void WriteSchema(Utf8JsonWriter json)
    {
        if (pattern is null)
        {
            json.WriteStartArray("type");
            json.WriteStringValue("string");
            json.WriteStringValue("number");
            json.WriteEndArray();
            json.WriteNumber("minLength", shortest);
            json.WriteNumber("maxLength", longest);
        }
        else
        {
            json.WriteString("type", "string");
            json.WriteString("pattern", pattern);
        }
    }
}
