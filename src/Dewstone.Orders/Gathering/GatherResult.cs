using Dewstone.Model.Diagnostics;

namespace Dewstone.Orders.Gathering;

/// <summary>What came of gathering an order.</summary>
/// <param name="Contents">What its folder holds.</param>
/// <param name="Order">The order put together; null when it is not complete, and nothing was written.</param>
/// <param name="Findings">All findings, placed.</param>
public sealed record GatherResult(FolderContents Contents, GatheredOrder? Order, IReadOnlyList<Diagnostic> Findings);
