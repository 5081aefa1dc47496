using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Studies;

/// <summary>A limits card, or what forbids one.</summary>
/// <param name="Card">The card; null with an error among the findings.</param>
/// <param name="Findings">What is wrong with printer or bed.</param>
public sealed record LimitsResult(LimitsCard? Card, IReadOnlyList<Diagnostic> Findings);
