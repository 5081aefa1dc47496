namespace Dewstone.Jobs.Emission.Json;

/// <summary>Names of description files as job files hold them: relative to the root, the same from whatever folder the program was called.</summary>
/// <param name="rootFolder">The root; null when there is none.</param>
internal sealed class FilePlaces(string? rootFolder)
{
    private readonly string? root = rootFolder is null ? null : Path.GetFullPath(rootFolder);

    /// <summary>A file's path below the root with <c>/</c> between its parts; its bare name when it lies elsewhere.</summary>
    /// <param name="file">Path as it was given.</param>
    public string NameOf(string file)
    {
        if (root is not null)
        {
            string relative = Path.GetRelativePath(root, Path.GetFullPath(file)).Replace('\\', '/');
            if (relative != ".." && !relative.StartsWith("../", StringComparison.Ordinal) && !Path.IsPathRooted(relative))
            {
                return relative;
            }
        }

        return Path.GetFileName(file);
    }

    /// <summary>The same as a relative URI reference (RFC 3986).</summary>
    /// <param name="file">Path as it was given.</param>
    public string UriOf(string file) => string.Join('/', NameOf(file).Split('/').Select(Uri.EscapeDataString));
}
