using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Compilation;

/// <summary>What compiling one unit gave.</summary>
/// <param name="Job">The job; null when a fault stopped it before wetting, or when only the drawing was checked.</param>
/// <param name="Findings">All findings, placed; those of the job when there is one.</param>
public sealed record CompileResult(CompiledJob? Job, IReadOnlyList<Diagnostic> Findings)
{
    /// <summary>Whether a fault in the description, the shape, the printer or a file stopped it before wetting.</summary>
    public bool InputAtFault => Job is null && Findings.Any(f => f.Severity == Severity.Error);
}
