using System.Security.Cryptography;
using System.Text;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Reading.Files;
using Dewstone.Reading.Tables;

namespace Dewstone.Reading.Job;

/// <summary>Reads the core and the dose tables of a job folder, and holds each table against its hash.</summary>
public static class EarlierJobReader
{
    private const string CoreFile = "job.json";
    private const long MostBytes = 256L * 1024 * 1024;

    /// <summary>Reads a job folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="findings">Takes DW8109 when it is no job that could be printed, DW8110 when it is damaged, DW7025 when it is of a bin and may not be.</param>
    /// <param name="bins">Whether it may be the job of a bin with several units.</param>
    /// <returns>The job; null with a finding.</returns>
    public static EarlierJob? Read(string folder, DiagnosticBag findings, bool bins = false)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(findings);
        SourceLocation place = new(folder, 0, 0);
        try
        {
            if (!File.Exists(Path.Combine(folder, CoreFile)))
            {
                findings.Add(JobFolderFindings.NoSuchJob.At($"`{folder}` is no job folder: it holds no {CoreFile}", "name a folder that `dewstone compile` wrote", location: place));
                return null;
            }

            byte[] bytes = Bytes(folder, CoreFile);
            if (!JobCoreReader.TryRead(bytes, out JobCore? core, out string fault) || core is null)
            {
                return Damaged(CoreFile, fault);
            }

            if (!bins && core.Description.Bin.Count > 0)
            {
                findings.Add(BinFindings.NotForBins.At(
                    $"`{folder}` is the job of a bin with {core.Description.Bin.Count} units; this is for jobs of one unit", "name the job of a single unit; `dewstone verify` takes bin jobs too",
                    location: place));
                return null;
            }

            if (core.DoseTables.Count > 0 && !File.Exists(Path.Combine(folder, core.DoseTables[0].Path)))
            {
                findings.Add(JobFolderFindings.NoSuchJob.At($"`{folder}` was held back and has no dose tables", "name a job that could be printed", location: place));
                return null;
            }

            DosePlan doses = new() { Lattice = core.Lattice, Steps = new int[core.Lattice.Count], CentiMillilitres = new int[core.Lattice.Count] };
            foreach ((string path, string sha256) in core.DeliveredTables.Concat(core.DoseTables))
            {
                byte[] table = Bytes(folder, path);
                if (Convert.ToHexStringLower(SHA256.HashData(table)) != sha256)
                {
                    return Damaged(path, "it is not the table the job was compiled with");
                }

                DoseTableReader.Read(Encoding.UTF8.GetString(table), doses);
            }

            return new EarlierJob(folder, core, bytes, doses);
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException or InvalidDataException)
        {
            return Damaged("a file of it", broken.Message.ReplaceLineEndings(" ").TrimEnd('.'));
        }

        EarlierJob? Damaged(string file, string fault)
        {
            findings.Add(JobFolderFindings.Damaged.At($"the job `{folder}` cannot be used: {file}: {fault}", "compile it again, or name another job", location: place));
            return null;
        }
    }

    // Paths come from job.json; none may leave the folder.
    private static byte[] Bytes(string folder, string path)
    {
        string root = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)) + Path.DirectorySeparatorChar;
        string full = Path.GetFullPath(Path.Combine(root, path));
        FileInfo file = new(full);
        return !full.StartsWith(root, StringComparison.Ordinal) || file.LinkTarget is not null
            ? throw new InvalidDataException($"{path} leads out of the job folder")
            : WholeFile.TryRead(full, MostBytes) ?? throw new InvalidDataException($"{path} is too large for a job's file");
    }
}
