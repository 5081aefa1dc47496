namespace Dewstone.Model.Results;

/// <summary>One hole that was tried.</summary>
/// <param name="DrawnMetres">Diameter as drawn, metres.</param>
/// <param name="ClearMetres">Diameter of the largest ball that gets through once set, metres; 0 when it closes.</param>
/// <param name="Place">Which place against the needles: 0 with its centre line through a needle, 1 midway between needles.</param>
public sealed record TestHole(double DrawnMetres, double ClearMetres, int Place);
