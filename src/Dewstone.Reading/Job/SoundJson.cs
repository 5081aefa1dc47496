using System.Text.Json;

namespace Dewstone.Reading.Job;

/// <summary>Parses JSON of a stranger. The library looks at a text only when it is asked for, and then throws as if the program were at fault; here it is looked at first.</summary>
public static class SoundJson
{
    /// <summary>Parses a document.</summary>
    /// <param name="file">Its bytes.</param>
    /// <returns>The document, of which every name and text can be read.</returns>
    /// <exception cref="JsonException">It is no JSON, or a text in it is no Unicode.</exception>
    public static JsonDocument Parse(ReadOnlyMemory<byte> file)
    {
        Utf8JsonReader reader = new(file.Span);
        while (reader.Read())
        {
            if (reader.TokenType is JsonTokenType.String or JsonTokenType.PropertyName && (reader.ValueIsEscaped || reader.ValueSpan.ContainsAnyExceptInRange((byte)0x20, (byte)0x7E)))
            {
                Look(ref reader);
            }
        }

        return JsonDocument.Parse(file);
    }

    private static void Look(ref Utf8JsonReader reader)
    {
        try
        {
            _ = reader.GetString();
        }
        catch (InvalidOperationException broken)
        {
            throw new JsonException($"a text near byte {reader.TokenStartIndex} is no Unicode", broken);
        }
    }
}
