namespace Dewstone.Orders.Packing;

/// <summary>A way to fill a bin.</summary>
/// <param name="Counts">Units of each kind.</param>
/// <param name="Places">Where they stand, by kind.</param>
public sealed record BinPattern(IReadOnlyList<int> Counts, IReadOnlyList<PackedPlace> Places);
