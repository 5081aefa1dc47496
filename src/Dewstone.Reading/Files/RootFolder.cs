using Dewstone.Model.Diagnostics;

namespace Dewstone.Reading.Files;

/// <summary>Finds the folder under which the files must lie that a description names.</summary>
internal static class RootFolder
{
    /// <summary>Name of the file that marks a root; it may be empty.</summary>
    public const string Mark = ".dewstone-root";

    /// <summary>The root for a file named on the command line.</summary>
    /// <param name="fullPath">Full path of the file.</param>
    /// <param name="stated">What <c>--root</c> says; null when it is not given.</param>
    /// <param name="findings">Takes a finding when the stated folder does not exist.</param>
    /// <returns>Full path, links resolved; null with a finding.</returns>
    public static string? Find(string fullPath, string? stated, DiagnosticBag findings)
    {
        if (stated is not null)
        {
            string? root = Directory.Exists(stated) ? LinkResolver.Resolve(stated) : null;
            if (root is null)
            {
                findings.Add(FileFindings.NoSuchRoot.At($"there is no folder `{stated}`", "name a folder that exists with --root",
                    location: new SourceLocation(stated, 0, 0)));
            }

            return root;
        }

        string folder = Path.GetDirectoryName(fullPath) ?? fullPath;
        for (string? above = folder; above is not null; above = Path.GetDirectoryName(above))
        {
            if (File.Exists(Path.Combine(above, Mark)))
            {
                return LinkResolver.Resolve(above);
            }
        }

        return LinkResolver.Resolve(folder);
    }
}
