namespace Dewstone.Jobs.Emission.Json;

/// <summary>Names of description files as job files hold them.</summary>
/// <param name="nameOfFile">Name below the root, with <c>/</c> between its parts, of a path as it was given.</param>
internal sealed class FilePlaces(Func<string, string> nameOfFile)
{
    /// <summary>A file's name.</summary>
    /// <param name="file">Path as it was given.</param>
    public string NameOf(string file) => nameOfFile(file);

    /// <summary>The same as a relative URI reference (RFC 3986).</summary>
    /// <param name="file">Path as it was given.</param>
    public string UriOf(string file) => string.Join('/', NameOf(file).Split('/').Select(Uri.EscapeDataString));
}
