using Dewstone.Reading.Files;

namespace Dewstone.Jobs.Folders;

/// <summary>The real file system.</summary>
internal sealed class Disk : IDisk
{
    // A manifest lists some hundred files; more than this is none of ours.
    private const int LargestRead = 16 * 1024 * 1024;

    public bool FolderExists(string path) => Directory.Exists(path);

    public bool OtherExists(string path) => !Directory.Exists(path) && (File.Exists(path) || IsLink(path));

    public bool IsLink(string path) => new FileInfo(path).LinkTarget is not null;

    public IReadOnlyList<string> FolderNames(string path) =>
        [.. new DirectoryInfo(path).EnumerateDirectories("*", new EnumerationOptions { AttributesToSkip = FileAttributes.None, IgnoreInaccessible = true })
            .Where(folder => folder.LinkTarget is null).Select(folder => folder.Name).Order(StringComparer.Ordinal)];

    public DateTime LatestChange(string path) =>
        new DirectoryInfo(path).EnumerateFileSystemInfos().Select(entry => entry.LastWriteTimeUtc).Append(Directory.GetLastWriteTimeUtc(path)).Max();

    public bool HoldsNoFile(string path) => !Directory.EnumerateFiles(path, "*", SearchOption.AllDirectories).Any();

    public byte[]? TryRead(string path)
    {
        try
        {
            FileInfo file = new(path);
            return file.Exists && file.LinkTarget is null && file.Length <= LargestRead ? WholeFile.Read(path) : null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    public void CreateFolder(string path) => Directory.CreateDirectory(path);

    public void WriteFile(string path, ReadOnlyMemory<byte> bytes)
    {
        using FileStream file = new(path, FileMode.CreateNew, FileAccess.Write, FileShare.None, bufferSize: 0);
        file.Write(bytes.Span);
    }

    public void Settle(string path)
    {
        using FileStream file = new(path, FileMode.Open, FileAccess.ReadWrite, FileShare.Read, bufferSize: 0);
        file.Flush(flushToDisk: true);
    }

    public void Rename(string from, string to) => Directory.Move(from, to);

    public void Delete(string path) => Directory.Delete(path, recursive: true);
}
