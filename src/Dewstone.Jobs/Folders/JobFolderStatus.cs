namespace Dewstone.Jobs.Folders;

/// <summary>How writing a job folder went.</summary>
public enum JobFolderStatus
{
    /// <summary>It stands complete.</summary>
    Written,

    /// <summary>It cannot be created there: no permission, a path that is no folder, something else of that name (exit code 73).</summary>
    CannotCreate,

    /// <summary>Another try may go well: disk full, a fault of the store (exit code 75).</summary>
    TryAgain,
}
