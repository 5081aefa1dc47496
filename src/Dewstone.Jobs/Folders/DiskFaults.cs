using Dewstone.Model.Diagnostics;

namespace Dewstone.Jobs.Folders;

/// <summary>Tells faults of the disk apart: those another place cures from those another try may cure.</summary>
public static class DiskFaults
{
    // Error numbers of Linux, <errno-base.h> and <errno.h>; disk full of Windows as HRESULT.
    private const int NoSpace = 28, OverQuota = 122, NoFolder = 20, ReadOnly = 30, NameTooLong = 36, TooManyLinks = 40;
    private const int WindowsDiskFull = unchecked((int)0x80070070), WindowsHandleDiskFull = unchecked((int)0x80070027);

    /// <summary>Whether an exception is the disk's and not ours.</summary>
    public static bool IsDiskFault(Exception fault) => fault is IOException or UnauthorizedAccessException;

    /// <summary>How writing went.</summary>
    public static JobFolderStatus StatusOf(Exception fault) => fault switch
    {
        UnauthorizedAccessException or PathTooLongException or DirectoryNotFoundException or FileNotFoundException => JobFolderStatus.CannotCreate,
        { HResult: NoFolder or ReadOnly or NameTooLong or TooManyLinks } => JobFolderStatus.CannotCreate,
        _ => JobFolderStatus.TryAgain,
    };

    /// <summary>The finding that says so.</summary>
    public static Diagnostic FindingOf(Exception fault, string path)
    {
        string reason = fault.Message.ReplaceLineEndings(" ");
        if (StatusOf(fault) == JobFolderStatus.CannotCreate)
        {
            return JobFolderFindings.CannotCreate.At(
                $"the job folder {path} cannot be created: {reason}",
                "name a folder you may write to with -o");
        }

        bool full = fault.HResult is NoSpace or OverQuota or WindowsDiskFull or WindowsHandleDiskFull;
        return full
            ? JobFolderFindings.DiskFull.At($"no room for the job folder {path}: {reason}", "free some space and run the same command again; nothing half-written was left")
            : JobFolderFindings.StoreFault.At($"the job folder {path} was not written: {reason}", "run the same command again; nothing half-written was left");
    }
}
