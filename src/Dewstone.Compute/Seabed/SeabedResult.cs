using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Seabed;

/// <summary>What came of standing a unit at a site.</summary>
/// <param name="Report">The figures; null when the site's figures allow none, or nothing hardened.</param>
/// <param name="Requirements">Those of the site: factors of safety, bearing, clearance, permit.</param>
/// <param name="Findings">Findings DW6001 to DW6019.</param>
public sealed record SeabedResult(StabilityReport? Report, IReadOnlyList<RequirementResult> Requirements, IReadOnlyList<Diagnostic> Findings);
