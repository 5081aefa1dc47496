namespace Dewstone.Reading.Yaml;

/// <summary>A table of keys and values; no key stands twice.</summary>
/// <param name="place">Where it begins.</param>
/// <param name="isBlock">Whether it is written over several lines by indentation.</param>
internal sealed class YamlMap(TextPlace place, bool isBlock) : YamlNode(place)
{
    /// <summary>Its keys in the order of the text.</summary>
    public List<YamlEntry> Entries { get; } = [];

    /// <inheritdoc/>
    public override bool IsBlock => isBlock;

    /// <inheritdoc/>
    public override string InWords => "a table of keys";

    /// <summary>The entry of a key, or null.</summary>
    /// <param name="key">Key.</param>
    /// <returns>The entry, or null when the key is absent.</returns>
    public YamlEntry? Find(string key)
    {
        foreach (YamlEntry entry in Entries)
        {
            if (entry.Key == key)
            {
                return entry;
            }
        }

        return null;
    }
}
