namespace Dewstone.Compute.Calibration;

/// <summary>How one kind of measurement agrees with the fit.</summary>
/// <param name="Kind">What was measured.</param>
/// <param name="Count">How often.</param>
/// <param name="Scatter">One standard deviation of a measurement as a share.</param>
/// <param name="IsUsual">Whether the scatter is mostly the usual one, because the data leave less than one reading to spare.</param>
/// <param name="LeftOutScatter">Root mean square of the residuals, each against the fit without it, a share.</param>
/// <param name="LackOfFit">Chance of residuals so much larger than repeats explain, 0 to 1; null without enough repeats.</param>
public sealed record KindReport(MeasuredKind Kind, int Count, double Scatter, bool IsUsual, double LeftOutScatter, double? LackOfFit);
