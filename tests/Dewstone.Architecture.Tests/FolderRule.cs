namespace Dewstone.Architecture.Tests;

/// <summary>Holds source files of one project against its folder table.</summary>
internal static class FolderRule
{
    /// <summary>Every breach, as one line that names the file and what it may not do; empty when the files keep the table.</summary>
    /// <param name="project">Project, which is also the namespace its folders stand in.</param>
    /// <param name="table">Folder to the other folders it may use.</param>
    /// <param name="files">Its source files.</param>
    public static IReadOnlyList<string> Breaches(
        string project, IReadOnlyDictionary<string, string[]> table, IReadOnlyList<SourceFile> files) =>
        [.. files.SelectMany(file => Breaches(project, table, file))];

    private static IEnumerable<string> Breaches(string project, IReadOnlyDictionary<string, string[]> table, SourceFile file)
    {
        if (!table.TryGetValue(file.Folder, out string[]? allowed))
        {
            yield return $"{file.Path}: folder '{file.Folder}' is not in the table of {project}";
            yield break;
        }

        string own = $"{project}.{file.Folder}";
        foreach (string declared in file.Namespaces.Where(name => name != own && !name.StartsWith(own + ".", StringComparison.Ordinal)))
        {
            yield return $"{file.Path}: namespace {declared} does not stand in {own}";
        }

        foreach (string mention in file.Mentions.Where(name => name.StartsWith(project + ".", StringComparison.Ordinal)))
        {
            string folder = mention[(project.Length + 1)..];
            if (folder != file.Folder && !allowed.Contains(folder))
            {
                yield return $"{file.Path}: {file.Folder} may not use {folder}";
            }
        }
    }
}
