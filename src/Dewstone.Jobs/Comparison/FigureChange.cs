namespace Dewstone.Jobs.Comparison;

/// <summary>A total that changed.</summary>
/// <param name="Name">Its name, with its unit at the end.</param>
/// <param name="Old">Before.</param>
/// <param name="New">Now.</param>
public readonly record struct FigureChange(string Name, double? Old, double? New)
{
    /// <summary>Compares two lists.</summary>
    /// <param name="old">Before.</param>
    /// <param name="now">Now.</param>
    /// <returns>Changes in the order of the totals.</returns>
    internal static IReadOnlyList<FigureChange> Compare(IReadOnlyList<(string Name, double? Value)> old, IReadOnlyList<(string Name, double? Value)> now) =>
    [
        .. old.Concat(now).Select(f => f.Name).Distinct()
            .Select(name => new FigureChange(name, old.FirstOrDefault(f => f.Name == name).Value, now.FirstOrDefault(f => f.Name == name).Value))
            .Where(change => change.Old != change.New),
    ];
}
