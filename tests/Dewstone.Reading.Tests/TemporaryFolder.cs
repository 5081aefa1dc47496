namespace Dewstone.Reading.Tests;

/// <summary>A folder of its own for one test, deleted at its end.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("dewstone-").FullName;

    public static TemporaryFolder WithSamples()
    {
        TemporaryFolder folder = new();
        foreach (string file in Directory.EnumerateFiles(SampleFiles.Folder, "*", SearchOption.AllDirectories))
        {
            string copy = folder.At(System.IO.Path.GetRelativePath(SampleFiles.Folder, file));
            Directory.CreateDirectory(System.IO.Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        return folder;
    }

    public string At(string relative) => System.IO.Path.Combine(Path, relative);

    public string Write(string relative, string text)
    {
        string path = At(relative);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    public void Dispose() => Directory.Delete(Path, true);
}
