using Dewstone.Model.Diagnostics;

namespace Dewstone.Jobs.Folders;

/// <summary>Writes one file whole or not at all.</summary>
public static class SingleFile
{
    /// <summary>Writes beside and renames into place; an older file of that name is replaced only by the whole new one.</summary>
    /// <param name="path">Path, relative to the current folder.</param>
    /// <param name="bytes">Content.</param>
    /// <returns>Null when it stands; else how it failed and DW8328.</returns>
    public static (JobFolderStatus Status, Diagnostic Finding)? Write(string path, ReadOnlyMemory<byte> bytes)
    {
        string full = Path.GetFullPath(path), name = Path.GetFileName(full);
        string beside = Path.Combine(Path.GetDirectoryName(full) ?? full, $".{name}.new-{Environment.ProcessId}");
        try
        {
            using (FileStream file = new(beside, FileMode.Create, FileAccess.Write, FileShare.None))
            {
                file.Write(bytes.Span);
                file.Flush(flushToDisk: true);
            }

            File.Move(beside, full, overwrite: true);
            return null;
        }
        catch (Exception fault) when (DiskFaults.IsDiskFault(fault) || fault is ArgumentException)
        {
            try
            {
                File.Delete(beside);
            }
            catch (Exception left) when (DiskFaults.IsDiskFault(left))
            {
                // What could not be written can rarely be removed; the first fault is the one to tell.
            }

            return (DiskFaults.StatusOf(fault), MeasurementFindings.NotWritten.At(
                $"`{path}` was not written: {fault.Message.ReplaceLineEndings(" ")}", "name a file you may write, in a folder that exists", location: new SourceLocation(path, 0, 0)));
        }
    }
}
