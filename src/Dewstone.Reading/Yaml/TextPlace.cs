namespace Dewstone.Reading.Yaml;

/// <summary>A place in a text, both counted from 1.</summary>
/// <param name="Line">Line.</param>
/// <param name="Column">Column in characters.</param>
internal readonly record struct TextPlace(int Line, int Column)
{
    /// <summary>The very beginning.</summary>
    public static TextPlace Start => new(1, 1);

    /// <summary>Whether this place comes later.</summary>
    /// <param name="other">Other place.</param>
    /// <returns>True when later.</returns>
    public bool IsAfter(TextPlace other) => Line != other.Line ? Line > other.Line : Column > other.Column;
}
