using Dewstone.Jobs.Folders;

namespace Dewstone.Jobs.Tests.Folders;

/// <summary>The real disk, on which one change fails, or from one change on nothing works any more as if the program had been killed.</summary>
/// <param name="fault">Makes the fault; null for a kill.</param>
/// <param name="at">Number of the change that fails, from 1.</param>
internal sealed class FailingDisk(Func<Exception>? fault, int at) : IDisk
{
    private readonly Disk disk = new();
    private int changes;

    public int Changes => changes;

    public List<string> Log { get; } = [];

    public bool FolderExists(string path) => disk.FolderExists(path);

    public bool OtherExists(string path) => disk.OtherExists(path);

    public bool IsLink(string path) => disk.IsLink(path);

    public IReadOnlyList<string> FolderNames(string path) => disk.FolderNames(path);

    public DateTime LatestChange(string path) => disk.LatestChange(path);

    public bool HoldsNoFile(string path) => disk.HoldsNoFile(path);

    public byte[]? TryRead(string path) => disk.TryRead(path);

    public void CreateFolder(string path) => Change($"create {path}", () => disk.CreateFolder(path));

    public void WriteFile(string path, ReadOnlyMemory<byte> bytes) =>
        Change($"write {path}", () => disk.WriteFile(path, bytes), () => disk.WriteFile(path, bytes[..(bytes.Length / 2)]));

    public void Settle(string path) => Change($"settle {path}", () => disk.Settle(path));

    public void Rename(string from, string to) => Change($"rename {from} {to}", () => disk.Rename(from, to));

    public void Delete(string path) => Change($"delete {path}", () => disk.Delete(path), () => RemoveOne(path));

    private void Change(string what, Action change, Action? half = null)
    {
        int number;
        lock (disk)
        {
            number = ++changes;
            Log.Add(what);
        }

        if (number == at)
        {
            half?.Invoke();
            throw fault?.Invoke() ?? new Killed();
        }

        if (fault is null && number > at)
        {
            throw new Killed();
        }

        change();
    }

    private static void RemoveOne(string path) =>
        File.Delete(Directory.EnumerateFiles(path, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal).First());
}

/// <summary>Stands for a killed program: nothing of ours catches it.</summary>
internal sealed class Killed : Exception;
