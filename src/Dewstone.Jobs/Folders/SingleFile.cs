using Dewstone.Model.Diagnostics;

namespace Dewstone.Jobs.Folders;

/// <summary>Writes one file whole or not at all.</summary>
public static class SingleFile
{
    /// <summary>
    /// Writes beside and renames into place; an older file of that name is replaced only by the whole new one. What is no file of its own - a link, a pipe, a device - or
    /// holds nothing is written through instead, so that it stays what it is.
    /// </summary>
    /// <param name="path">Path, relative to the current folder.</param>
    /// <param name="bytes">Content.</param>
    /// <returns>Null when it stands; else how it failed and DW8328.</returns>
    public static (JobFolderStatus Status, Diagnostic Finding)? Write(string path, ReadOnlyMemory<byte> bytes)
    {
        try
        {
            string full = Path.GetFullPath(path);
            if (new FileInfo(full) is var standing && (standing.LinkTarget is not null || standing is { Exists: true, Length: 0 }))
            {
                WriteThrough(full, bytes);
            }
            else
            {
                WriteBeside(full, bytes);
            }

            return null;
        }
        catch (Exception fault) when (DiskFaults.IsDiskFault(fault) || fault is ArgumentException)
        {
            return (DiskFaults.StatusOf(fault), MeasurementFindings.NotWritten.At(
                $"`{path}` was not written: {fault.Message.ReplaceLineEndings(" ")}", "name a file you may write, in a folder that exists", location: new SourceLocation(path, 0, 0)));
        }
    }

    private static void WriteThrough(string full, ReadOnlyMemory<byte> bytes)
    {
        using FileStream file = new(full, FileMode.OpenOrCreate, FileAccess.Write, FileShare.ReadWrite, bufferSize: 0);
        bool canShrink = file.CanSeek && file.Length > 0;
        if (canShrink)
        {
            file.SetLength(0);
        }

        file.Write(bytes.Span);
        file.Flush();
    }

    private static void WriteBeside(string full, ReadOnlyMemory<byte> bytes)
    {
        string beside = Path.Combine(Path.GetDirectoryName(full) ?? full, $".{Path.GetFileName(full)}.new-{Environment.ProcessId}");
        try
        {
            using (FileStream file = new(beside, FileMode.Create, FileAccess.Write, FileShare.None))
            {
                file.Write(bytes.Span);
                file.Flush(flushToDisk: true);
            }

            File.Move(beside, full, overwrite: true);
        }
        catch (Exception fault) when (DiskFaults.IsDiskFault(fault))
        {
            try
            {
                File.Delete(beside);
            }
            catch (Exception left) when (DiskFaults.IsDiskFault(left))
            {
                // What could not be written can rarely be removed; the first fault is the one to tell.
            }

            throw;
        }
    }
}
