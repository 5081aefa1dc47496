namespace Dewstone.Model.Diagnostics;

/// <summary>A place in a text file.</summary>
/// <param name="File">Path as the user gave it, or relative to the root.</param>
/// <param name="Line">Line, counted from 1; 0 when the finding concerns the whole file.</param>
/// <param name="Column">Column in characters, counted from 1; 0 when the finding concerns the whole line.</param>
public sealed record SourceLocation(string File, int Line, int Column);
