namespace Dewstone.Cli.Commands;

/// <summary>Finds the unit descriptions that paths on the command line mean.</summary>
internal static class UnitFiles
{
    private const string Pattern = "*.unit.yaml";

    /// <summary>Files as they are, folders as all the units below them, by path.</summary>
    /// <param name="paths">As written.</param>
    /// <returns>Files, at least one.</returns>
    /// <exception cref="UsageException">A folder without units.</exception>
    public static IReadOnlyList<string> Under(IReadOnlyList<string> paths)
    {
        List<string> files = [];
        foreach (string path in paths)
        {
            if (!Directory.Exists(path))
            {
                files.Add(path);
                continue;
            }

            // Hidden folders are skipped: version control keeps old copies in them.
            string[] found =
            [
                .. Directory.EnumerateFiles(path, Pattern, new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.Hidden | FileAttributes.System })
                    .Order(StringComparer.Ordinal),
            ];
            files.AddRange(found.Length > 0 ? found : throw new UsageException($"there is no {Pattern} in the folder {path}."));
        }

        return [.. files.Distinct(StringComparer.Ordinal)];
    }
}
