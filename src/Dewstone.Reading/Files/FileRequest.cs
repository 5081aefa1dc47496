using Dewstone.Model.Diagnostics;

namespace Dewstone.Reading.Files;

/// <summary>A file to be read, and who asks for it.</summary>
/// <param name="FullPath">Full path.</param>
/// <param name="Shown">Path for findings about its content.</param>
/// <param name="Root">Full path of the folder it must lie under, links resolved; null when it was named on the command line.</param>
/// <param name="NamedAt">Place that names it; null for the command line.</param>
/// <param name="NamedBy">Value that names it; null for the command line.</param>
internal sealed record FileRequest(string FullPath, string Shown, string? Root, SourceLocation? NamedAt, KeyPath? NamedBy);
