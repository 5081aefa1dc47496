namespace Dewstone.Model.Measurements;

/// <summary>Water that a column of loose mix has drawn from its wet foot.</summary>
/// <param name="Specimen">Name of the column.</param>
/// <param name="Seconds">Time since its foot got wet, s.</param>
/// <param name="UptakeGrams">Gain of mass, g.</param>
/// <param name="AreaSquareCentimetres">Area of its foot, cm2.</param>
/// <param name="Line">Line in its file, from 1.</param>
public sealed record AbsorptionReading(string Specimen, double Seconds, double UptakeGrams, double AreaSquareCentimetres, int Line);
