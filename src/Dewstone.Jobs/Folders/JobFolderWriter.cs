using Dewstone.Jobs.Emission;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Jobs.Folders;

/// <summary>
/// Writes a job folder complete or not at all: it is built under a hidden name beside its place, written through to the disk, then renamed
/// into place. An older job is replaced only by a complete new one, and is put back when anything fails.
/// </summary>
public static class JobFolderWriter
{
    // Two programs that write the same job at once push each other's folder aside; the last one stays.
    private const int Attempts = 8;

    /// <summary>Looks, before anything is computed, whether the job folder could be placed.</summary>
    /// <param name="outputFolder">Folder it is to be written into.</param>
    /// <param name="name">Name of the job.</param>
    /// <returns>What stands in the way; null when nothing is seen to.</returns>
    public static Diagnostic? Examine(string outputFolder, string name)
    {
        Disk disk = new();
        try
        {
            return FolderObstacles.OfOutput(disk, outputFolder) ?? FolderObstacles.OfJob(disk, outputFolder, name);
        }
        catch (Exception fault) when (DiskFaults.IsDiskFault(fault))
        {
            return DiskFaults.FindingOf(fault, Path.Combine(outputFolder, name + JobFolder.Ready));
        }
    }

    /// <summary>Writes a job folder.</summary>
    /// <param name="order">What to write and where.</param>
    /// <param name="cancellationToken">Looked at before each file; never once the change of folders has begun.</param>
    /// <returns>How it went and what there is to say.</returns>
    /// <exception cref="OperationCanceledException">Stopped; nothing was left.</exception>
    public static JobFolderOutcome Write(JobFolderOrder order, CancellationToken cancellationToken = default) => Write(order, new Disk(), cancellationToken);

    /// <summary>The same through a given disk.</summary>
    internal static JobFolderOutcome Write(JobFolderOrder order, IDisk disk, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(order);
        CheckName(order);
        string place = Path.Combine(order.OutputFolder, order.Name + (order.Held ? JobFolder.Held : JobFolder.Ready));
        List<Diagnostic> said = [];
        string? madeFolder = null;
        try
        {
            if (FolderObstacles.OfOutput(disk, order.OutputFolder) is { } inTheWay)
            {
                return new JobFolderOutcome(JobFolderStatus.CannotCreate, "", [inTheWay]);
            }

            madeFolder = FirstMissing(disk, order.OutputFolder);
            disk.CreateFolder(order.OutputFolder);
            foreach (string ending in JobFolder.Endings)
            {
                said.AddRange(JobFolderRecovery.PutBack(disk, order.OutputFolder, order.Name + ending));
            }

            if (FolderObstacles.OfJob(disk, order.OutputFolder, order.Name) is { } taken)
            {
                return new JobFolderOutcome(JobFolderStatus.CannotCreate, "", [.. said, taken]);
            }

            string built = Build(order, disk, cancellationToken);
            Place(order, disk, built, said);
            return new JobFolderOutcome(JobFolderStatus.Written, place, said);
        }
        catch (Exception fault) when (DiskFaults.IsDiskFault(fault))
        {
            Unmake(disk, madeFolder);
            return new JobFolderOutcome(DiskFaults.StatusOf(fault), "", [.. said, DiskFaults.FindingOf(fault, place)]);
        }
        catch
        {
            // Stopped, or a file could not be made.
            Unmake(disk, madeFolder);
            throw;
        }
    }

    private static string Build(JobFolderOrder order, IDisk disk, CancellationToken cancellationToken)
    {
        string hidden = HiddenNames.NewTemporary(order.Name + (order.Held ? JobFolder.Held : JobFolder.Ready));
        string built = Path.Combine(order.OutputFolder, hidden);
        try
        {
            disk.CreateFolder(built);
            JobFolderRecovery.SweepStale(disk, order.OutputFolder, hidden);
            using FolderFiller filler = new(disk, built);
            foreach (EmittedFile file in order.Files)
            {
                cancellationToken.ThrowIfCancellationRequested();
                filler.Add(file);
            }

            filler.Finish();
            return built;
        }
        catch
        {
            TryDelete(disk, built);
            throw;
        }
    }

    private static void Place(JobFolderOrder order, IDisk disk, string built, List<Diagnostic> said)
    {
        FolderChange change = new(disk, order.OutputFolder);
        string ready = order.Name + JobFolder.Ready, held = order.Name + JobFolder.Held, superseded = order.Name + JobFolder.Superseded;
        try
        {
            change.Replace(built, order.Held ? held : ready, Attempts);
            if (order.Held && disk.FolderExists(Path.Combine(order.OutputFolder, ready)))
            {
                change.Replace(Path.Combine(order.OutputFolder, ready), superseded, Attempts);
                said.Add(JobFolderFindings.Superseded.At(
                    $"the older {ready} is now {superseded}, because the new job is held",
                    "do not print it unless you know why; mend the errors and compile again"));
            }
        }
        catch (Exception fault) when (DiskFaults.IsDiskFault(fault))
        {
            change.Undo();
            TryDelete(disk, built);
            throw;
        }

        change.RemoveOlder(said);
        string heldPath = Path.Combine(order.OutputFolder, held);
        if (!order.Held && disk.FolderExists(heldPath))
        {
            JobFolderRecovery.Remove(disk, heldPath, held, said);
            if (!disk.FolderExists(heldPath))
            {
                said.Add(JobFolderFindings.HeldRemoved.At($"{held} of an earlier run was removed: the job can now be printed", "nothing to do"));
            }
        }
    }

    private static string? FirstMissing(IDisk disk, string outputFolder)
    {
        string? missing = null;
        for (string? folder = Path.GetFullPath(outputFolder); folder is not null && !disk.FolderExists(folder); folder = Path.GetDirectoryName(folder))
        {
            missing = folder;
        }

        return missing;
    }

    /// <summary>Removes the output folder again if it was made for this job and holds nothing.</summary>
    private static void Unmake(IDisk disk, string? madeFolder)
    {
        if (madeFolder is not null && disk.FolderExists(madeFolder) && HoldsNoFile(disk, madeFolder))
        {
            TryDelete(disk, madeFolder);
        }
    }

    private static bool HoldsNoFile(IDisk disk, string folder)
    {
        try
        {
            return disk.HoldsNoFile(folder);
        }
        catch (Exception fault) when (DiskFaults.IsDiskFault(fault))
        {
            return false;
        }
    }

    private static void TryDelete(IDisk disk, string folder)
    {
        try
        {
            if (disk.FolderExists(folder))
            {
                disk.Delete(folder);
            }
        }
        catch (Exception fault) when (DiskFaults.IsDiskFault(fault))
        {
            // The fault that brought us here is the one to report; the hidden folder is swept by a later run.
        }
    }

    private static void CheckName(JobFolderOrder order)
    {
        if (order.Name.Length == 0 || order.Name != Path.GetFileName(order.Name))
        {
            throw new ArgumentException($"'{order.Name}' is not the name of a job.", nameof(order));
        }
    }
}
