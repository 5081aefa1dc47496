namespace Dewstone.Model.Description;

/// <summary>Least factors of safety.</summary>
/// <param name="Sliding">Against sliding, 1.</param>
/// <param name="Overturning">Against overturning, 1.</param>
/// <param name="Bearing">Against bearing failure, 1.</param>
public sealed record SafetyFactors(double Sliding, double Overturning, double Bearing);
