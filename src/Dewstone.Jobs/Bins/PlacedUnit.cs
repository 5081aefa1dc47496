namespace Dewstone.Jobs.Bins;

/// <summary>A solved unit and where it is to stand in a bin.</summary>
/// <param name="Mark">Its mark.</param>
/// <param name="Solved">The unit as solved alone.</param>
/// <param name="QuarterTurns">Quarter turns from how it was solved, counter-clockwise seen from above, 0 to 3.</param>
/// <param name="Column">First column of the printer's grid, from 0, that the turned footprint covers.</param>
/// <param name="Row">First row of it, from 0.</param>
public sealed record PlacedUnit(string Mark, SolvedUnit Solved, int QuarterTurns, int Column, int Row);
