namespace Dewstone.Jobs.Comparison;

/// <summary>A value of the description that changed.</summary>
/// <param name="Key">Path of the value, named items by their names: <c>unit.tunnels[east-west].section.width</c>.</param>
/// <param name="Old">Value before; null when it was not there.</param>
/// <param name="New">Value now; null when it is not there.</param>
public sealed record KeyChange(string Key, string? Old, string? New);
