using Dewstone.Model.Diagnostics;

namespace Dewstone.Orders.Batches;

/// <summary>What compiling an order, or a task's share of it, led to.</summary>
/// <param name="Bins">What became of each bin, in the order of the plan.</param>
/// <param name="Findings">Findings about all of it; an error means that nothing was begun.</param>
public sealed record BatchResult(IReadOnlyList<BinOutcome> Bins, IReadOnlyList<Diagnostic> Findings);
