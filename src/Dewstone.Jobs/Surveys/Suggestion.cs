namespace Dewstone.Jobs.Surveys;

/// <summary>A changed figure of the mix that would explain a scan better.</summary>
/// <param name="Figure">Key of the mix.</param>
/// <param name="Factor">By what it was multiplied, 1.</param>
/// <param name="Value">What it would be, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Unit of the value; "1" when it has none.</param>
/// <param name="BeforeMetres">Mean distance of the scan to the prediction, a point counting 30 mm at most, metres.</param>
/// <param name="AfterMetres">The same with the change.</param>
public readonly record struct Suggestion(string Figure, double Factor, double Value, string Unit, double BeforeMetres, double AfterMetres);
