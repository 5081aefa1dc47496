namespace Dewstone.Reading.Tests;

/// <summary>The source tree the tests were built from.</summary>
internal static class Repository
{
    public static string Root { get; } = Find(AppContext.BaseDirectory);

    public static string Schemas { get; } = Path.Combine(Root, "schemas");

    private static string Find(string from) =>
        File.Exists(Path.Combine(from, "src", "Dewstone.slnx"))
            ? from
            : Find(Path.GetDirectoryName(Path.TrimEndingDirectorySeparator(from)) ?? throw new DirectoryNotFoundException("The source tree was not found."));
}
