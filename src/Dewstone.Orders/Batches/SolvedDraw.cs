using Dewstone.Jobs.Bins;

namespace Dewstone.Orders.Batches;

/// <summary>A unit of the order with its record, and the draw that passed.</summary>
/// <param name="Record">Its record.</param>
/// <param name="Solved">The unit; null when it failed.</param>
internal sealed record SolvedDraw(UnitRecord Record, SolvedUnit? Solved);
