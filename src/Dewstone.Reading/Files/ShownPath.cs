namespace Dewstone.Reading.Files;

/// <summary>Paths as they are shown in findings.</summary>
internal static class ShownPath
{
    /// <summary>The shown path of a file that another file names: both joined, without <c>..</c> where they cancel.</summary>
    /// <param name="namingFile">Shown path of the naming file.</param>
    /// <param name="reference">Path as written in it.</param>
    /// <returns>The path to show, with <c>/</c>.</returns>
    public static string Beside(string namingFile, string reference)
    {
        string joined = Path.Combine(Path.GetDirectoryName(namingFile) ?? "", reference).Replace('\\', '/');
        List<string> parts = [];
        foreach (string part in joined.Split('/'))
        {
            if (part == ".." && parts.Count > 0 && parts[^1] is not (".." or ""))
            {
                parts.RemoveAt(parts.Count - 1);
            }
            else if (part != "." && (part.Length > 0 || parts.Count == 0))
            {
                parts.Add(part);
            }
        }

        return string.Join('/', parts);
    }
}
