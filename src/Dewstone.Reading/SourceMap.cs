using Dewstone.Model.Diagnostics;

namespace Dewstone.Reading;

/// <summary>Where each value of one description file stands.</summary>
public sealed class SourceMap
{
    private readonly Dictionary<string, SourceLocation> places = new(StringComparer.Ordinal);

    /// <summary>A map without places.</summary>
    /// <param name="file">File as shown in findings.</param>
    public SourceMap(string file) => File = file;

    /// <summary>File as shown in findings.</summary>
    public string File { get; }

    /// <summary>
    /// The place of a value: its own when it stands there, else that of the nearest table or list around it, at last the first line.
    /// </summary>
    /// <param name="path">Path as in <see cref="KeyPath.Path"/>.</param>
    /// <returns>The place.</returns>
    public SourceLocation Find(string path)
    {
        string sought = path;
        while (true)
        {
            if (places.TryGetValue(sought, out SourceLocation? place))
            {
                return place;
            }

            if (sought.Length == 0)
            {
                return new SourceLocation(File, 1, 1);
            }

            sought = sought[..Math.Max(0, sought.LastIndexOfAny(['.', '[']))];
        }
    }

    internal void Set(string path, int line, int column) => places[path] = new SourceLocation(File, line, column);
}
