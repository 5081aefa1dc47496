namespace Dewstone.Reading.Files;

/// <summary>A file that was read.</summary>
/// <param name="FullPath">Full path as reached, links not resolved; what it names is relative to its folder.</param>
/// <param name="Shown">Path for findings.</param>
/// <param name="Text">Its text without byte order mark.</param>
/// <param name="Sha256">SHA-256 of its bytes, lower-case hexadecimal.</param>
internal sealed record SourceText(string FullPath, string Shown, string Text, string Sha256);
