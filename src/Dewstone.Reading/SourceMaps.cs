using Dewstone.Model.Diagnostics;

namespace Dewstone.Reading;

/// <summary>The source maps of all files a job was made from; places findings that later stages raise by key.</summary>
public sealed class SourceMaps
{
    private readonly Dictionary<DescriptionKind, SourceMap> maps = [];
    private readonly Dictionary<string, string> underRoot = new(StringComparer.Ordinal);

    /// <summary>The map of a kind, or null when the job has no such file.</summary>
    /// <param name="kind">Kind of description.</param>
    /// <returns>The map, or null.</returns>
    public SourceMap? Find(DescriptionKind kind) => maps.GetValueOrDefault(kind);

    /// <summary>Gives a finding that names a key its line, and likewise its related places; others are returned as they are.</summary>
    /// <param name="diagnostic">Finding.</param>
    /// <returns>The finding with a location, when its file is known.</returns>
    public Diagnostic Place(Diagnostic diagnostic) => diagnostic with
    {
        Location = diagnostic.Location ?? Locate(diagnostic.Key),
        Related = [.. diagnostic.Related.Select(related => related with { Location = related.Location ?? Locate(related.Key) })],
    };

    /// <summary>The place of a key, or null when the job has no file of its kind.</summary>
    /// <param name="key">Key; null gives null.</param>
    /// <returns>The place, or null.</returns>
    public SourceLocation? Locate(KeyPath? key) => key is null ? null : Find(key.Kind)?.Find(key.Path);

    /// <summary>
    /// A file's path below the root, with <c>/</c>: the same from any current folder, for files whose bytes must not depend on it.
    /// </summary>
    /// <param name="file">File as shown in findings.</param>
    /// <returns>The path below the root; the bare file name when the file lies elsewhere.</returns>
    public string BelowRoot(string file) => underRoot.GetValueOrDefault(file) ?? Path.GetFileName(file);

    internal void Set(DescriptionKind kind, SourceMap map) => maps[kind] = map;

    internal void SetBelowRoot(string file, string below) => underRoot[file] = below;
}
