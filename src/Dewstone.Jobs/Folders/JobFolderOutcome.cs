using Dewstone.Model.Diagnostics;

namespace Dewstone.Jobs.Folders;

/// <summary>What came of writing a job folder.</summary>
/// <param name="Status">How it went.</param>
/// <param name="Path">Where the folder stands; empty when it was not written.</param>
/// <param name="Findings">What there is to say: faults, and what became of older folders.</param>
public sealed record JobFolderOutcome(JobFolderStatus Status, string Path, IReadOnlyList<Diagnostic> Findings);
