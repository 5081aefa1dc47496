namespace Dewstone.Reading.Yaml;

/// <summary>A single value.</summary>
/// <param name="place">Where it begins.</param>
/// <param name="text">Its text, without quotes.</param>
/// <param name="isPlain">Whether it stands without quotes.</param>
internal sealed class YamlScalar(TextPlace place, string text, bool isPlain) : YamlNode(place)
{
    /// <summary>Its text, without quotes.</summary>
    public string Text { get; } = text;

    /// <summary>Whether it stands without quotes.</summary>
    public bool IsPlain { get; } = isPlain;

    /// <summary>Whether nothing stands there: no text, or one of YAML's words for nothing.</summary>
    public bool IsNothing => IsPlain && Text is "" or "~" or "null" or "Null" or "NULL";

    /// <inheritdoc/>
    public override string InWords => IsNothing ? "nothing" : IsPlain ? $"`{Quoting.Short(Text)}`" : $"the text \"{Quoting.Short(Text)}\"";
}
