namespace Dewstone.Reading.Files;

/// <summary>Resolves every link on the way to a file, also those of its folders.</summary>
internal static class LinkResolver
{
    private const int MostLinks = 40;

    /// <summary>The real path of a file or folder.</summary>
    /// <param name="fullPath">Full path.</param>
    /// <returns>The path without links; null when they lead in a circle. What does not exist is taken as it is written.</returns>
    /// <exception cref="IOException">A link cannot be read.</exception>
    public static string? Resolve(string fullPath)
    {
        string path = Path.GetFullPath(fullPath);
        for (int links = 0; links <= MostLinks; links++)
        {
            if (FirstLink(path) is not { } link)
            {
                return path;
            }

            string target = Path.GetFullPath(link.LinkTarget!, Path.GetDirectoryName(link.FullName)!);
            path = Path.GetFullPath(target + path[link.FullName.Length..]);
        }

        return null;
    }

    /// <summary>Whether a path lies in a folder or below.</summary>
    /// <param name="path">Full path, links resolved.</param>
    /// <param name="folder">Full path of the folder, links resolved.</param>
    /// <returns>True when it does.</returns>
    public static bool LiesUnder(string path, string folder)
    {
        string prefix = Path.TrimEndingDirectorySeparator(folder);
        return path.StartsWith(Path.EndsInDirectorySeparator(prefix) ? prefix : prefix + Path.DirectorySeparatorChar,
            StringComparison.Ordinal);
    }

    private static FileInfo? FirstLink(string path)
    {
        int end = Path.GetPathRoot(path)!.Length;
        while (end < path.Length)
        {
            int next = path.IndexOf(Path.DirectorySeparatorChar, end);
            FileInfo part = new(next < 0 ? path : path[..next]);
            if (part.LinkTarget is not null)
            {
                return part;
            }

            end = next < 0 ? path.Length : next + 1;
        }

        return null;
    }
}
