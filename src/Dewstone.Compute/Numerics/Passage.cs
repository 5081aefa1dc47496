namespace Dewstone.Compute.Numerics;

/// <summary>The widest way from one region to another.</summary>
/// <param name="Width">Diameter of the largest ball that gets through, in the unit of the clearances.</param>
/// <param name="NarrowestCell">Flat index of the cell in which the ball's centre stands at the narrowest place.</param>
public readonly record struct Passage(double Width, int NarrowestCell);
