using Dewstone.Model.Diagnostics;

namespace Dewstone.Jobs.Folders;

/// <summary>A change of folders that can be undone until the older ones are removed: renames only, remembered in order.</summary>
/// <param name="disk">The disk.</param>
/// <param name="parent">Folder in which all of it happens.</param>
internal sealed class FolderChange(IDisk disk, string parent)
{
    private readonly List<(string From, string To)> done = [];
    private readonly List<(string Path, string FolderName)> older = [];

    /// <summary>Puts a folder at a name; what stood there is kept aside.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="folderName">The name.</param>
    /// <param name="attempts">How often to try when another program takes the name meanwhile.</param>
    public void Replace(string folder, string folderName, int attempts)
    {
        string place = Path.Combine(parent, folderName);
        for (int attempt = 1; ; attempt++)
        {
            if (disk.FolderExists(place))
            {
                SetAside(place, folderName);
            }

            try
            {
                Rename(folder, place);
                return;
            }
            catch (IOException) when (attempt < attempts && disk.FolderExists(folder) && disk.FolderExists(place))
            {
                // Another program placed the same job between our two renames: set that one aside as well.
            }
        }
    }

    /// <summary>Takes every rename back, the last one first, as far as it goes.</summary>
    public void Undo()
    {
        for (int i = done.Count - 1; i >= 0; i--)
        {
            try
            {
                disk.Rename(done[i].To, done[i].From);
            }
            catch (Exception fault) when (DiskFaults.IsDiskFault(fault))
            {
                // What cannot be renamed back now lies complete under its hidden name, and the next run puts it back.
            }
        }
    }

    /// <summary>Removes what was kept aside.</summary>
    /// <param name="said">Receives what could not be removed.</param>
    public void RemoveOlder(List<Diagnostic> said)
    {
        foreach ((string path, string folderName) in older)
        {
            JobFolderRecovery.Remove(disk, path, folderName, said);
        }
    }

    private void SetAside(string place, string folderName)
    {
        string aside = Path.Combine(parent, HiddenNames.NewOlder(folderName));
        try
        {
            Rename(place, aside);
            older.Add((aside, folderName));
        }
        catch (IOException fault) when (fault is DirectoryNotFoundException || !disk.FolderExists(place))
        {
            // Another program has just set it aside.
        }
    }

    private void Rename(string from, string to)
    {
        disk.Rename(from, to);
        done.Add((from, to));
    }
}
