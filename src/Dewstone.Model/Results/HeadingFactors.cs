namespace Dewstone.Model.Results;

/// <summary>Least factors of safety of one heading, over both water levels and all phases.</summary>
/// <param name="HeadingDegrees">Bearing of the unit's +y, degrees.</param>
/// <param name="Sliding">Against sliding, 1.</param>
/// <param name="Overturning">Against overturning, 1.</param>
public sealed record HeadingFactors(double HeadingDegrees, double Sliding, double Overturning);
