using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Strength;

/// <summary>What the check of strength and lifting found.</summary>
/// <param name="Report">The figures; null when nothing hardened, or when the mix's rule does not hold for its bed.</param>
/// <param name="Findings">DW5003 to DW5011.</param>
public sealed record StrengthResult(StrengthReport? Report, IReadOnlyList<Diagnostic> Findings);
