namespace Dewstone.Reading.Yaml;

/// <summary>A value of a YAML text with the place where it begins.</summary>
/// <param name="place">Where it begins.</param>
internal abstract class YamlNode(TextPlace place)
{
    /// <summary>Where it begins.</summary>
    public TextPlace Place { get; } = place;

    /// <summary>What stands there, in words for a message.</summary>
    public abstract string InWords { get; }

    /// <summary>Whether it is a list or table written over several lines by indentation.</summary>
    public virtual bool IsBlock => false;
}
