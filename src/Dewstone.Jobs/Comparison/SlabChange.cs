namespace Dewstone.Jobs.Comparison;

/// <summary>What changed between two heights of the unit.</summary>
/// <param name="FromMetres">Lower height, metres, unit frame.</param>
/// <param name="ToMetres">Upper height.</param>
/// <param name="AddedLitres">Solid that is now there, litres.</param>
/// <param name="RemovedLitres">Solid that is there no more, litres.</param>
public readonly record struct SlabChange(double FromMetres, double ToMetres, double AddedLitres, double RemovedLitres);
