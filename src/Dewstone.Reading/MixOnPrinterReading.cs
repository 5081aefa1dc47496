using Dewstone.Model.Diagnostics;

namespace Dewstone.Reading;

/// <summary>What became of reading a mix and a printer.</summary>
/// <param name="Value">Both; null when any finding is an error.</param>
/// <param name="Diagnostics">All findings, file by file in the order of reading, each file's by line and column.</param>
/// <param name="Sources">Where each value stands.</param>
public sealed record MixOnPrinterReading(MixOnPrinter? Value, IReadOnlyList<Diagnostic> Diagnostics, SourceMaps Sources);
