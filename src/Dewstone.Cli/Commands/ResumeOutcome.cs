using Dewstone.Jobs.Resuming;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Cli.Commands;

/// <summary>What came of resuming a job.</summary>
/// <param name="Job">The job folder, as written.</param>
/// <param name="Result">The answer; null when the input is at fault.</param>
/// <param name="Findings">All findings, those of writing included.</param>
/// <param name="Folder">The folder written; null when none was.</param>
/// <param name="ExitCode">What the program ends with.</param>
internal sealed record ResumeOutcome(string Job, ResumeResult? Result, IReadOnlyList<Diagnostic> Findings, string? Folder, int ExitCode);
