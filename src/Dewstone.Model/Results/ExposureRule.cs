namespace Dewstone.Model.Results;

/// <summary>Limits of a code for concrete in an exposure.</summary>
/// <param name="Name">Code and class.</param>
/// <param name="Exposure">What it is for.</param>
/// <param name="MostWaterCement">Greatest water/cement, 1.</param>
/// <param name="LeastPascals">Least compressive strength at 28 days (of cubes in EN 206), Pa.</param>
/// <param name="LeastCement">Least cement, kg/m3; null for none.</param>
/// <param name="ForSteel">Whether it guards steel and so binds reinforced concrete only.</param>
public sealed record ExposureRule(string Name, string Exposure, double MostWaterCement, double LeastPascals, double? LeastCement, bool ForSteel);
