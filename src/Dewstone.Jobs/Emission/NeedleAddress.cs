namespace Dewstone.Jobs.Emission;

/// <summary>Which needle of the head waters a position, and from where the head stands. All counted from 1.</summary>
/// <param name="Station">Station of the head.</param>
/// <param name="Column">Column of the needle in the head.</param>
/// <param name="Row">Row of the needle in the head.</param>
public readonly record struct NeedleAddress(int Station, int Column, int Row);
