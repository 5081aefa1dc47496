namespace Dewstone.Orders.Batches;

/// <summary>Seed that one feature of a varied unit was drawn with.</summary>
/// <param name="Feature">Name of the scatter, or <c>relief</c>.</param>
/// <param name="Seed">The seed, under 2^53, so that it can be read by any JSON reader and written into a unit's file.</param>
public sealed record DrawnSeed(string Feature, ulong Seed);
