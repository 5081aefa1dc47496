namespace Dewstone.Jobs.Tests.Folders;

/// <summary>A folder that is gone after the test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("dewstone-").FullName;

    public string this[string name] => System.IO.Path.Combine(Path, name);

    public string[] Names => [.. Directory.EnumerateFileSystemEntries(Path).Select(entry => System.IO.Path.GetFileName(entry)).Order(StringComparer.Ordinal)];

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
