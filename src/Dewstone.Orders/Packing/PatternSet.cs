namespace Dewstone.Orders.Packing;

/// <summary>Ways to fill a bin.</summary>
/// <param name="Patterns">None of them holds no more of every kind than another.</param>
/// <param name="Complete">Whether these are proved to be all: what any bin can hold, one of them holds too.</param>
public sealed record PatternSet(IReadOnlyList<BinPattern> Patterns, bool Complete);
