using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Folders;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Files;
using Dewstone.Reading.Job;

namespace Dewstone.Cli.Commands;

/// <summary>The manifest of a job folder that a command goes on from.</summary>
internal static class JobManifest
{
    /// <summary>Reads it.</summary>
    /// <param name="folder">The job folder.</param>
    /// <param name="findings">Takes DW8110 when it is missing or damaged.</param>
    /// <returns>The manifest; null with a finding.</returns>
    public static Manifest? Read(string folder, DiagnosticBag findings)
    {
        string file = Path.Combine(folder, ManifestEmitter.Path);
        string fault = "it is missing";
        try
        {
            if (File.Exists(file) && ManifestReader.TryRead(WholeFile.Read(file), out Manifest? manifest, out fault))
            {
                return manifest;
            }
        }
        catch (Exception broken) when (DiskFaults.IsDiskFault(broken))
        {
            fault = broken.Message.ReplaceLineEndings(" ").TrimEnd('.');
        }

        findings.Add(JobFolderFindings.Damaged.At(
            $"the job `{folder}` cannot be used: {ManifestEmitter.Path}: {fault}", "compile it again", location: new SourceLocation(folder, 0, 0)));
        return null;
    }
}
