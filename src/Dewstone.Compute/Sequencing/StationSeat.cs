namespace Dewstone.Compute.Sequencing;

/// <summary>Which needle of the head waters a position, and where the head then stands.</summary>
/// <param name="Station">Station, from 1.</param>
/// <param name="Column">Column of the needle in the head, from 1.</param>
/// <param name="Row">Row of the needle in the head, from 1.</param>
public readonly record struct StationSeat(int Station, int Column, int Row);
