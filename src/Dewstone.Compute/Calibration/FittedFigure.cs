namespace Dewstone.Compute.Calibration;

/// <summary>One figure of a mix after the fit.</summary>
/// <param name="Name">As in <see cref="MixFigures.Names"/>.</param>
/// <param name="Unit">Unit of value and interval.</param>
/// <param name="Fitted">Whether the data told it; else it is the given mix's.</param>
/// <param name="Value">The figure.</param>
/// <param name="Low">Lower end of the 95 % interval; the value itself when not fitted.</param>
/// <param name="High">Upper end of the 95 % interval.</param>
/// <param name="Spread">One standard deviation as a share; that of figures not fitted, as the given mix has it, is part of it.</param>
public sealed record FittedFigure(string Name, string Unit, bool Fitted, double Value, double Low, double High, double Spread);
