using Dewstone.Model.Diagnostics;

namespace Dewstone.Jobs.Folders;

/// <summary>Tidies what stopped runs left beside job folders.</summary>
public static class JobFolderRecovery
{
    private static readonly TimeSpan StaleAge = TimeSpan.FromDays(1);

    /// <summary>
    /// Puts the older job back where a run was stopped between taking it away and placing the new one. Any command that is about to read
    /// a job folder calls this first.
    /// </summary>
    /// <param name="jobFolder">Path of the job folder.</param>
    /// <returns>What was done; empty when there was nothing to do.</returns>
    public static IReadOnlyList<Diagnostic> PutBack(string jobFolder)
    {
        try
        {
            string full = Path.GetFullPath(Path.TrimEndingDirectorySeparator(jobFolder));
            return Path.GetDirectoryName(full) is { } parent && Directory.Exists(parent)
                ? PutBack(new Disk(), parent, Path.GetFileName(full))
                : [];
        }
        catch (Exception fault) when (DiskFaults.IsDiskFault(fault))
        {
            return [];
        }
    }

    /// <summary>Removes job folders that killed programs of this machine left half-built in a folder. To be called before the first job is written there.</summary>
    /// <param name="parent">The folder.</param>
    public static void SweepOrphans(string parent)
    {
        try
        {
            foreach (string name in Directory.Exists(parent) ? new Disk().FolderNames(parent).Where(HiddenNames.IsOrphan) : [])
            {
                Directory.Delete(Path.Combine(parent, name), recursive: true);
            }
        }
        catch (Exception fault) when (DiskFaults.IsDiskFault(fault))
        {
            // Sweeping is a courtesy: what cannot be removed now is swept by age later.
        }
    }

    /// <summary>The same through a given disk; also clears older ones that were only waiting to be removed.</summary>
    internal static IReadOnlyList<Diagnostic> PutBack(IDisk disk, string parent, string folderName)
    {
        List<Diagnostic> said = [];
        string place = Path.Combine(parent, folderName);
        string[] olders =
        [
            .. disk.FolderNames(parent).Where(name => HiddenNames.IsOlder(name, folderName)).Select(name => Path.Combine(parent, name))
                .OrderByDescending(folder => LatestChange(disk, folder)),
        ];
        foreach (string older in olders)
        {
            if (disk.FolderExists(place) || disk.OtherExists(place))
            {
                Remove(disk, older, folderName, said);
            }
            else if (JobFolder.IsJobFolder(disk, older) && Return(disk, older, place))
            {
                said.Add(JobFolderFindings.PutBack.At($"{place} was put back after an interrupted run", "nothing to do"));
            }
        }

        return said;
    }

    /// <summary>Renames an older job back; false when another program was quicker.</summary>
    private static bool Return(IDisk disk, string older, string place)
    {
        try
        {
            disk.Rename(older, place);
            return true;
        }
        catch (IOException) when (!disk.FolderExists(older) || disk.FolderExists(place))
        {
            return false;
        }
    }

    private static DateTime LatestChange(IDisk disk, string folder)
    {
        try
        {
            return disk.LatestChange(folder);
        }
        catch (IOException)
        {
            // It has just been removed or put back.
            return DateTime.MinValue;
        }
    }

    /// <summary>Removes a folder: first under a temporary name, so that a half-removed one is never taken for a job.</summary>
    internal static void Remove(IDisk disk, string folder, string folderName, List<Diagnostic> said)
    {
        string doomed = folder;
        try
        {
            string hidden = Path.Combine(Path.GetDirectoryName(folder)!, HiddenNames.NewTemporary(folderName));
            disk.Rename(folder, hidden);
            doomed = hidden;
            disk.Delete(hidden);
        }
        catch (Exception fault) when (DiskFaults.IsDiskFault(fault))
        {
            // Another run may have removed it meanwhile.
            if (disk.FolderExists(doomed))
            {
                said.Add(JobFolderFindings.Leftover.At(
                    $"{doomed} could not be removed: {fault.Message.ReplaceLineEndings(" ")}", "remove it by hand"));
            }
        }
    }

    /// <summary>
    /// Removes temporaries that nobody has touched for a day. Their age is taken against a folder just made on the same disk, so that no
    /// clock of ours is asked and a store with a clock of its own is no danger.
    /// </summary>
    internal static void SweepStale(IDisk disk, string parent, string justMade)
    {
        try
        {
            DateTime now = disk.LatestChange(Path.Combine(parent, justMade));
            foreach (string name in disk.FolderNames(parent).Where(name => name != justMade && HiddenNames.IsTemporary(name)))
            {
                string path = Path.Combine(parent, name);
                if (now - disk.LatestChange(path) > StaleAge)
                {
                    disk.Delete(path);
                }
            }
        }
        catch (Exception fault) when (DiskFaults.IsDiskFault(fault))
        {
            // Sweeping is a courtesy: what cannot be removed today is met again tomorrow.
        }
    }
}
