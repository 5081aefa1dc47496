namespace Dewstone.Architecture.Tests;

/// <summary>Finds the repository that these tests were built from.</summary>
internal static class Repository
{
    private static readonly Lazy<string> Found = new(Find);

    /// <summary>The repository's top folder.</summary>
    public static string Root => Found.Value;

    /// <summary>The folder of a project of <c>src/</c>.</summary>
    public static string Room(string project) => Path.Combine(Root, "src", project);

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "src", "Dewstone.slnx")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException($"No folder above {AppContext.BaseDirectory} holds src/Dewstone.slnx.");
    }
}
