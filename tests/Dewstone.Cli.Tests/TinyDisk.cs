using System.Diagnostics;

namespace Dewstone.Cli.Tests;

/// <summary>A small file system in memory, mounted for one test; only root may do so, and only on Linux.</summary>
internal sealed class TinyDisk : IDisposable
{
    private readonly string folder;

    private TinyDisk(string folder) => this.folder = folder;

    /// <summary>Bytes still free.</summary>
    public long FreeBytes => new DriveInfo(folder).AvailableFreeSpace;

    /// <summary>Mounts one.</summary>
    /// <param name="folder">Made and mounted over.</param>
    /// <param name="size">Such as <c>3m</c>.</param>
    /// <returns>The disk, or null where it may not be mounted.</returns>
    public static TinyDisk? TryMount(string folder, string size)
    {
        Directory.CreateDirectory(folder);
        return OperatingSystem.IsLinux() && Environment.UserName == "root" && Run("mount", "-t", "tmpfs", "-o", $"size={size}", "tmpfs", folder)
            ? new TinyDisk(folder)
            : null;
    }

    /// <summary>Lets nobody write on it any more, not even root.</summary>
    /// <returns>False where that may not be done.</returns>
    public bool TryMakeReadOnly() => Run("mount", "-o", "remount,ro", folder);

    public void Dispose() => Run("umount", folder);

    private static bool Run(string program, params string[] words)
    {
        try
        {
            using Process process = Process.Start(new ProcessStartInfo(program, words) { RedirectStandardError = true, UseShellExecute = false })!;
            process.WaitForExit();
            return process.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}
