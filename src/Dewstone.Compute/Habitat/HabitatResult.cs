using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Habitat;

/// <summary>What came of a survey.</summary>
/// <param name="Report">The figures; null when nothing hardened.</param>
/// <param name="Findings">Findings DW6020 and DW6021.</param>
public sealed record HabitatResult(HabitatReport? Report, IReadOnlyList<Diagnostic> Findings);
