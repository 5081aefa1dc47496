using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Folders;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading;

namespace Dewstone.Cli.Commands;

/// <summary>Writes what a calibration gives; never over what it was made from.</summary>
internal static class CalibrationFiles
{
    /// <summary>Finds an output that is an input.</summary>
    /// <param name="target">Output.</param>
    /// <param name="inputs">Files that are read.</param>
    /// <returns>DW8327, or nothing.</returns>
    public static IEnumerable<Diagnostic> Overwritten(string target, IEnumerable<string> inputs) =>
        inputs.Where(input => input.Length > 0 && target.Length > 0 && MeasurementReader.IsSameFile(input, target)).Take(1).Select(input => MeasurementFindings.WouldOverwrite.At(
            $"`{target}` is read and would be overwritten", "name a new file with -o", location: new SourceLocation(input, 0, 0)));

    /// <summary>Writes the output and its pictures.</summary>
    /// <param name="target">Output.</param>
    /// <param name="bytes">Its content.</param>
    /// <param name="folder">Folder for pictures; null for none.</param>
    /// <param name="pictures">Makes them.</param>
    /// <param name="findings">Takes DW8328.</param>
    /// <returns>The exit code.</returns>
    public static int Write(string target, byte[] bytes, string? folder, Func<IReadOnlyList<EmittedFile>> pictures, List<Diagnostic> findings)
    {
        int code = Write(target, bytes, findings);
        if (folder is null || code != ExitCode.Done)
        {
            return code;
        }

        try
        {
            Directory.CreateDirectory(folder);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException)
        {
            // Writing into it says what is wrong.
        }

        return ExitCode.Combine([.. pictures().Select(picture => Write(Path.Combine(folder, picture.RelativePath), picture.Bytes, findings)), code]);
    }

    private static int Write(string path, ReadOnlyMemory<byte> bytes, List<Diagnostic> findings)
    {
        if (SingleFile.Write(path, bytes) is not { } fault)
        {
            return ExitCode.Done;
        }

        findings.Add(fault.Finding);
        return fault.Status == JobFolderStatus.CannotCreate ? ExitCode.CannotCreate : ExitCode.TryAgain;
    }
}
