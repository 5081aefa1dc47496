using Dewstone.Reading.Files;

namespace Dewstone.Orders.Batches;

/// <summary>
/// Files in a folder that several programs on several machines may write into at once, without a lock: each is written under a hidden name of
/// its own, seen through to the disk and renamed, so that under its name it is whole or absent.
/// </summary>
public static class SharedFile
{
    /// <summary>Writes a file; an older one of that name is replaced unless it is the same.</summary>
    /// <param name="path">Its place; folders above are made.</param>
    /// <param name="bytes">Content.</param>
    /// <exception cref="IOException">The disk's fault; nothing half-written stands.</exception>
    /// <exception cref="UnauthorizedAccessException">No permission.</exception>
    public static void Write(string path, ReadOnlySpan<byte> bytes)
    {
        if (TryRead(path) is { } standing && bytes.SequenceEqual(standing))
        {
            return;
        }

        Place(path, bytes, replace: true);
    }

    /// <summary>Writes a file unless one of that name stands: of two writers the second drops its copy.</summary>
    /// <param name="path">Its place; folders above are made.</param>
    /// <param name="bytes">Content.</param>
    /// <exception cref="IOException">The disk's fault; nothing half-written stands.</exception>
    /// <exception cref="UnauthorizedAccessException">No permission.</exception>
    public static void WriteOnce(string path, ReadOnlySpan<byte> bytes)
    {
        if (!File.Exists(path))
        {
            Place(path, bytes, replace: false);
        }
    }

    /// <summary>Content of a file.</summary>
    /// <param name="path">The file.</param>
    /// <returns>Its bytes; null when it does not stand.</returns>
    /// <exception cref="IOException">It stands but cannot be read.</exception>
    public static byte[]? TryRead(string path)
    {
        try
        {
            return WholeFile.Read(path);
        }
        catch (Exception fault) when (fault is FileNotFoundException or DirectoryNotFoundException)
        {
            return null;
        }
    }

    private static void Place(string path, ReadOnlySpan<byte> bytes, bool replace)
    {
        string folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        Directory.CreateDirectory(folder);
        string hidden = Path.Combine(folder, TemporaryName.New(Path.GetFileName(path)));
        try
        {
            using (FileStream file = new(hidden, FileMode.CreateNew, FileAccess.Write, FileShare.None, bufferSize: 0))
            {
                file.Write(bytes);
                file.Flush(flushToDisk: true);
            }

            Rename(hidden, path, replace);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            TryDelete(hidden);
            throw;
        }
    }

    private static void Rename(string hidden, string path, bool replace)
    {
        try
        {
            File.Move(hidden, path, replace);
        }
        catch (IOException) when (!replace && File.Exists(path))
        {
            TryDelete(hidden);
        }
    }

    private static void TryDelete(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // The fault that brought us here is the one to tell; what is left is swept by a later run.
        }
    }
}
