using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>What one check found.</summary>
/// <typeparam name="TReport">Kind of report.</typeparam>
/// <param name="Report">The figures.</param>
/// <param name="Requirements">Requirements judged.</param>
/// <param name="Findings">Findings.</param>
internal sealed record Checked<TReport>(TReport Report, IReadOnlyList<RequirementResult> Requirements, IReadOnlyList<Diagnostic> Findings);
