namespace Dewstone.Model.Results;

/// <summary>An input that trials vary.</summary>
/// <param name="Name">What it is, for people.</param>
/// <param name="Spread">One standard deviation, in <paramref name="Unit"/>; of needles of their own repeatability the largest.</param>
/// <param name="Unit"><c>1</c> for a share of the figure, <c>K</c> for kelvin.</param>
/// <param name="Basis">Where the spread comes from, for people.</param>
public sealed record TrialInput(string Name, double Spread, string Unit, string Basis);
