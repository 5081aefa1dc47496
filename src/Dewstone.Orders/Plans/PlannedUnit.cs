namespace Dewstone.Orders.Plans;

/// <summary>Where a unit stands in its bin.</summary>
/// <param name="Mark">Its mark.</param>
/// <param name="QuarterTurns">Quarter turns about the vertical from how its kind was solved, counter-clockwise seen from above, 0 to 3.</param>
/// <param name="Column">First column of the printer's grid, counted from 0, that the turned footprint covers.</param>
/// <param name="Row">First row of it, counted from 0.</param>
public sealed record PlannedUnit(string Mark, int QuarterTurns, int Column, int Row);
