using Dewstone.Jobs.Surveys;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Cli.Commands;

/// <summary>What came of surveying a unit.</summary>
/// <param name="Job">The job folder, as named.</param>
/// <param name="Result">What was found; null when the input is at fault.</param>
/// <param name="Findings">All findings, those of reading included.</param>
/// <param name="Folder">The folder written; null when none was.</param>
/// <param name="ExitCode">What the program ends with.</param>
internal sealed record SurveyOutcome(string Job, SurveyResult? Result, IReadOnlyList<Diagnostic> Findings, string? Folder, int ExitCode);
