using Dewstone.Model.Diagnostics;

namespace Dewstone.Jobs.Folders;

/// <summary>What stands in the way of a job folder.</summary>
internal static class FolderObstacles
{
    private const int Looks = 8;

    /// <summary>What keeps the output folder itself from being made.</summary>
    public static Diagnostic? OfOutput(IDisk disk, string outputFolder)
    {
        for (string? folder = Path.GetFullPath(outputFolder); folder is not null; folder = Path.GetDirectoryName(folder))
        {
            if (disk.OtherExists(folder))
            {
                return JobFolderFindings.CannotCreate.At($"{folder} is not a folder", "name a folder with -o");
            }

            if (disk.FolderExists(folder))
            {
                return null;
            }
        }

        return null;
    }

    /// <summary>What else has one of the names the job may need.</summary>
    public static Diagnostic? OfJob(IDisk disk, string outputFolder, string name)
    {
        foreach (string ending in JobFolder.Endings)
        {
            string path = Path.Combine(outputFolder, name + ending);
            if (disk.OtherExists(path) || !IsFreeOrOurs(disk, path))
            {
                return JobFolderFindings.NotAJobFolder.At(
                    $"{path} exists and is not a job folder, so it is not replaced", "move it away, or name another folder with -o");
            }
        }

        return null;
    }

    /// <summary>Asked again before it says no: another program may be replacing the same job at this moment.</summary>
    private static bool IsFreeOrOurs(IDisk disk, string path)
    {
        for (int attempt = 1; attempt <= Looks; attempt++)
        {
            if (!disk.FolderExists(path) || JobFolder.IsJobFolder(disk, path))
            {
                return true;
            }
        }

        return false;
    }
}
