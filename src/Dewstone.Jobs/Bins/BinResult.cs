using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Bins;

/// <summary>What compiling a bin led to.</summary>
/// <param name="Question">What was asked.</param>
/// <param name="Job">The bin job, also when it is held; null when the units cannot stand so.</param>
/// <param name="Units">Each unit's verdict, in the order asked; empty without a job.</param>
/// <param name="Findings">All findings.</param>
public sealed record BinResult(BinQuestion Question, CompiledJob? Job, IReadOnlyList<BinVerdict> Units, IReadOnlyList<Diagnostic> Findings);
