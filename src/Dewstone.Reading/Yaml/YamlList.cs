namespace Dewstone.Reading.Yaml;

/// <summary>A list of values.</summary>
/// <param name="place">Where it begins.</param>
/// <param name="isBlock">Whether it is written over several lines by dashes.</param>
internal sealed class YamlList(TextPlace place, bool isBlock) : YamlNode(place)
{
    /// <summary>Its values in order.</summary>
    public List<YamlNode> Items { get; } = [];

    /// <inheritdoc/>
    public override bool IsBlock => isBlock;

    /// <inheritdoc/>
    public override string InWords => Items.Count == 1 ? "a list of 1 item" : $"a list of {Items.Count} items";
}
