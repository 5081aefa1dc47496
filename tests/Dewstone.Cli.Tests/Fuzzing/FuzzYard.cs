using System.Diagnostics;

namespace Dewstone.Cli.Tests.Fuzzing;

/// <summary>
/// Sound files that cases damage and that are put right after each: they stand four folders deep, so that what is written beside them is seen. <c>work</c> is the
/// current folder of the cases, <c>work/out</c> their output.
/// </summary>
internal sealed class FuzzYard : IDisposable
{
    private readonly string top = Directory.CreateTempSubdirectory("dewstone-fuzz-").FullName;
    private readonly Dictionary<string, byte[]> sound = [];
    private Dictionary<string, (long, DateTime)> standing = [];

    public FuzzYard()
    {
        Home = Path.Combine(top, "a", "b", "c");
        Directory.CreateDirectory(In("work", "out"));
        Directory.CreateDirectory(In("yard", "folder"));
    }

    /// <summary>Folder of <c>yard</c> and <c>work</c>.</summary>
    public string Home { get; }

    public string In(params string[] parts) => Path.Combine([Home, .. parts]);

    /// <summary>Writes a sound file into <c>yard</c>.</summary>
    public void Write(string name, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(In("yard", name))!);
        File.WriteAllText(In("yard", name), text);
    }

    /// <summary>Takes what stands now as sound, and lays out what is no file: links to nowhere and outside, a pipe.</summary>
    public void Settle()
    {
        File.WriteAllText(Path.Combine(top, "outside.csv"), "outside");
        File.CreateSymbolicLink(In("yard", "loop"), In("yard", "loop"));
        File.CreateSymbolicLink(In("yard", "away"), Path.Combine(top, "outside.csv"));
        if (OperatingSystem.IsLinux() || OperatingSystem.IsMacOS())
        {
            using Process pipe = Process.Start("mkfifo", [In("yard", "pipe")]);
            pipe.WaitForExit();
        }

        foreach (string file in Entries().Where(IsFile))
        {
            sound[file] = File.ReadAllBytes(file);
        }

        standing = Standing();
    }

    /// <summary>Bytes of a sound file.</summary>
    public byte[] Sound(string name) => sound[In("yard", name)];

    /// <summary>Names of the sound files below a folder of <c>yard</c>.</summary>
    public IReadOnlyList<string> Below(string folder) => [.. sound.Keys.Where(file => file.StartsWith(In("yard", folder) + "/", StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(file => Path.GetRelativePath(In("yard"), file))];

    /// <summary>Every file and folder with its size and time of change.</summary>
    public Dictionary<string, (long, DateTime)> Standing() => Entries().ToDictionary(entry => entry, entry => Directory.Exists(entry) ? default : (new FileInfo(entry).Length, File.GetLastWriteTimeUtc(entry)));

    /// <summary>Paths that differ between two states.</summary>
    public static IReadOnlyList<string> Changes(Dictionary<string, (long, DateTime)> before, Dictionary<string, (long, DateTime)> after) =>
        [.. before.Keys.Union(after.Keys).Where(path => !before.TryGetValue(path, out var was) || !after.TryGetValue(path, out var now) || was != now).Order(StringComparer.Ordinal)];

    /// <summary>Puts everything right again.</summary>
    /// <param name="now">What stands now.</param>
    public void Restore(Dictionary<string, (long, DateTime)> now)
    {
        foreach (string path in Changes(standing, now).Reverse())
        {
            if (sound.TryGetValue(path, out byte[]? bytes))
            {
                Remove(path);
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                File.WriteAllBytes(path, bytes);
                standing[path] = (bytes.Length, File.GetLastWriteTimeUtc(path));
            }
            else if (standing.ContainsKey(path))
            {
                Directory.CreateDirectory(path);
            }
            else
            {
                Remove(path);
            }
        }
    }

    /// <summary>Removes a file, a link or a folder with all in it.</summary>
    public static void Remove(string path)
    {
        if (new FileInfo(path).LinkTarget is null && Directory.Exists(path))
        {
            Directory.Delete(path, recursive: true);
        }
        else
        {
            File.Delete(path);
        }
    }

    public void Dispose() => Directory.Delete(top, recursive: true);

    private static bool IsFile(string path) => !Directory.Exists(path) && new FileInfo(path).LinkTarget is null && Path.GetFileName(path) != "pipe";

    private IEnumerable<string> Entries() => Directory.EnumerateFileSystemEntries(top, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None });
}
