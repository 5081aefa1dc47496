using Dewstone.Compute.Dosing;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Resuming;

/// <summary>Whether to go on after a stop, and with what.</summary>
public sealed record ResumeResult
{
    /// <summary>The job for the rest; null when the input is at fault. Held when the bin is to be scrapped.</summary>
    public CompiledJob? Job { get; init; }

    /// <summary>What the stop does; null likewise.</summary>
    public JointReport? Joint { get; init; }

    /// <summary>How the rest was dosed; null when nothing changed, or likewise.</summary>
    public RestResult? Rest { get; init; }

    /// <summary>All findings.</summary>
    public required IReadOnlyList<Diagnostic> Findings { get; init; }
}
