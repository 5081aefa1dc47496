using Dewstone.Model.Diagnostics;

namespace Dewstone.Reading;

/// <summary>What became of reading one description file.</summary>
/// <typeparam name="T">What the file describes.</typeparam>
/// <param name="Value">What it describes; null when any finding is an error.</param>
/// <param name="Diagnostics">All findings, by line and column.</param>
/// <param name="Source">Where each value stands.</param>
public sealed record FileReading<T>(T? Value, IReadOnlyList<Diagnostic> Diagnostics, SourceMap Source)
    where T : class;
