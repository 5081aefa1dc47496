namespace Dewstone.Orders.Packing;

/// <summary>A pattern that a printer can print.</summary>
/// <param name="Printer">The printer, from 0.</param>
/// <param name="Counts">Units it gives, by line of the order.</param>
/// <param name="Minutes">What it takes of the printer's time.</param>
public sealed record BinOffer(int Printer, IReadOnlyList<int> Counts, int Minutes);
