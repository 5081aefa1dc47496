namespace Dewstone.Model.Diagnostics;

/// <summary>
/// Names a value of a description by its keys, so that a finding raised far from the text can be placed at its line.
/// </summary>
/// <param name="Kind">Which description.</param>
/// <param name="Path">Keys joined by dots, list items in brackets counted from 0, e.g. <c>tunnels[1].section.width</c>; empty for the whole file.</param>
public sealed record KeyPath(DescriptionKind Kind, string Path)
{
    /// <summary>The path of a child key.</summary>
    /// <param name="key">Key name.</param>
    /// <returns>This path extended by the key.</returns>
    public KeyPath Key(string key) => this with { Path = Path.Length == 0 ? key : Path + "." + key };

    /// <summary>The path of a list item.</summary>
    /// <param name="index">Item, counted from 0.</param>
    /// <returns>This path extended by the item.</returns>
    public KeyPath Item(int index) => this with { Path = string.Create(null, $"{Path}[{index}]") };
}
