namespace Dewstone.Reading.Yaml;

/// <summary>A table of keys and values; no key stands twice.</summary>
/// <param name="place">Where it begins.</param>
/// <param name="isBlock">Whether it is written over several lines by indentation.</param>
internal sealed class YamlMap(TextPlace place, bool isBlock) : YamlNode(place)
{
    private readonly List<YamlEntry> entries = [];
    private readonly Dictionary<string, YamlEntry> byKey = new(StringComparer.Ordinal);

    /// <summary>Its keys in the order of the text.</summary>
    public IReadOnlyList<YamlEntry> Entries => entries;

    /// <inheritdoc/>
    public override bool IsBlock => isBlock;

    /// <inheritdoc/>
    public override string InWords => "a table of keys";

    /// <summary>The entry of a key, or null.</summary>
    /// <param name="key">Key.</param>
    /// <returns>The entry, or null when the key is absent.</returns>
    public YamlEntry? Find(string key) => byKey.GetValueOrDefault(key);

    /// <summary>Adds an entry.</summary>
    /// <param name="entry">Entry of a key that is not there yet.</param>
    /// <exception cref="ArgumentException">The key is there.</exception>
    public void Add(YamlEntry entry)
    {
        byKey.Add(entry.Key, entry);
        entries.Add(entry);
    }
}
