using Dewstone.Model.Diagnostics;

namespace Dewstone.Jobs.Bins;

/// <summary>What solving a unit led to.</summary>
/// <param name="Solved">The unit, also when it is held; null when its description, shape or printer forbade to solve it.</param>
/// <param name="Findings">All findings, placed.</param>
public sealed record UnitResult(SolvedUnit? Solved, IReadOnlyList<Diagnostic> Findings);
