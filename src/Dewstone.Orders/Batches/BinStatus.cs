using Dewstone.Orders.Plans;

namespace Dewstone.Orders.Batches;

/// <summary>How far a bin is.</summary>
/// <param name="Planned">The bin.</param>
/// <param name="State">How far.</param>
/// <param name="Record">Its record; null when it has none.</param>
public sealed record BinStatus(PlannedBin Planned, WorkState State, BinRecord? Record);
