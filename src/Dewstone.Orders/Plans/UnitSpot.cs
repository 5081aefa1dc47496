namespace Dewstone.Orders.Plans;

/// <summary>Where a unit of a line stands in a bin, before it has a mark.</summary>
/// <param name="Line">Line of the order, from 0.</param>
/// <param name="QuarterTurns">Quarter turns from how its kind was solved, 0 to 3.</param>
/// <param name="Column">First column of the printer's grid, from 0.</param>
/// <param name="Row">First row of it.</param>
public readonly record struct UnitSpot(int Line, int QuarterTurns, int Column, int Row);
