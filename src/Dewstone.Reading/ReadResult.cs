using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Reading;

/// <summary>What became of reading a unit with all it names.</summary>
/// <param name="Job">The description; null when any finding is an error.</param>
/// <param name="Diagnostics">All findings, file by file in the order of reading, each file's by line and column.</param>
/// <param name="Sources">Where each value stands.</param>
/// <param name="Inputs">The files read, as far as reading came: unit, tonight, mix, printer, needles, site.</param>
public sealed record ReadResult(
    JobDescription? Job, IReadOnlyList<Diagnostic> Diagnostics, SourceMaps Sources, IReadOnlyList<InputFile> Inputs);
