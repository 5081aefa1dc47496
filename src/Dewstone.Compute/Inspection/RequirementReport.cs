using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>What came of the requirements.</summary>
/// <param name="Results">Each judged requirement, in the order of the description's keys.</param>
/// <param name="Findings">One finding for each that is not met.</param>
public sealed record RequirementReport(IReadOnlyList<RequirementResult> Results, IReadOnlyList<Diagnostic> Findings);
