namespace Dewstone.Model.Measurements;

/// <summary>Two equal doses side by side in a bucket of loose mix, grown together and dug out once set.</summary>
/// <param name="DoseMillilitres">Each dose, mL.</param>
/// <param name="SpacingMillimetres">Distance between the needles, mm.</param>
/// <param name="LengthMillimetres">Whole length along the line of the needles, mm.</param>
/// <param name="WaistMillimetres">Width midway, mm.</param>
/// <param name="BedCelsius">Temperature of the bucket, degC.</param>
/// <param name="Line">Line in its file, from 1.</param>
public sealed record PairReading(
    double DoseMillilitres, double SpacingMillimetres, double LengthMillimetres, double WaistMillimetres, double BedCelsius, int Line);
