namespace Dewstone.Cli.Tests;

/// <summary>The checkout the tests run from.</summary>
internal static class Repository
{
    /// <summary>Its top folder: the nearest parent of the test program that holds <c>build.sh</c>.</summary>
    public static string Root { get; } = Find();

    /// <summary>A path in the repository.</summary>
    /// <param name="parts">Below the top.</param>
    /// <returns>The full path.</returns>
    public static string Path(params string[] parts) => System.IO.Path.Combine([Root, .. parts]);

    private static string Find()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(System.IO.Path.Combine(folder.FullName, "build.sh")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests run from a checkout of the repository.");
    }
}
