namespace Dewstone.Reading.Yaml;

/// <summary>A key with its value.</summary>
/// <param name="Key">The key.</param>
/// <param name="KeyPlace">Where the key begins.</param>
/// <param name="Value">Its value.</param>
internal sealed record YamlEntry(string Key, TextPlace KeyPlace, YamlNode Value)
{
    /// <summary>
    /// Where to point for this entry: at the value, but at the key when the value is spread over the lines below it.
    /// </summary>
    public TextPlace Place => Value.IsBlock || Value is YamlScalar { IsNothing: true } ? KeyPlace : Value.Place;
}
