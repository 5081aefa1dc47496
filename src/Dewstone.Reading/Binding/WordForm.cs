using System.Text.Json;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Quantities;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Binding;

/// <summary>One of a few words.</summary>
/// <typeparam name="T">What a word means.</typeparam>
/// <param name="words">The words with their meanings; the first is the example.</param>
internal sealed class WordForm<T>(params (string Word, T Meaning)[] words) : ScalarForm<T>
    where T : notnull
{
    /// <summary>The words.</summary>
    public IEnumerable<string> Words => words.Select(w => w.Word);

    /// <inheritdoc/>
    public override string InWords => "one of " + string.Join(", ", Words.Select(word => $"`{word}`"));

    /// <inheritdoc/>
    public override string Example => words[0].Word;

    /// <inheritdoc/>
    public override TextFault? Read(string text, out T? value)
    {
        foreach ((string word, T meaning) in words)
        {
            if (word == text)
            {
                value = meaning;
                return null;
            }
        }

        value = default;
        string meant = Spelling.Nearest(text, Words) is { } near ? $"did you mean `{near}`? " : "";
        return new TextFault(DescriptionFindings.UnknownWord, $"`{Quoting.Short(text)}` is not one of the words allowed here",
            $"{meant}write {InWords}");
    }

    /// <inheritdoc/>
    public override void WriteSchema(Utf8JsonWriter json)
    {
        json.WriteStartArray("enum");
        foreach ((string word, T meaning) in words)
        {
            // `true` and `false` stand without quotes, so other readers see a truth value.
            if (meaning is bool truth && word is "true" or "false")
            {
                json.WriteBooleanValue(word == "true");
            }
            else
            {
                json.WriteStringValue(word);
            }
        }

        json.WriteEndArray();
    }
}
