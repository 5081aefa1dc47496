using Dewstone.Jobs.Emission;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Files;
using Dewstone.Reading.Job;

namespace Dewstone.Jobs.Verification;

/// <summary>Holds the files of a job folder against the hashes in its manifest and its core.</summary>
internal static class FileCheck
{
    /// <summary>Checks the files.</summary>
    /// <param name="folder">The job folder.</param>
    /// <param name="manifest">Its manifest.</param>
    /// <param name="core">Its core, whose hashes of tables and sequence must be those of the manifest.</param>
    /// <returns>DW8201 to DW8203, by path.</returns>
    public static IReadOnlyList<Diagnostic> Check(string folder, Manifest manifest, JobCore core)
    {
        List<Diagnostic> found = [];
        Dictionary<string, string> listed = manifest.Files.DistinctBy(f => f.Path).ToDictionary(f => f.Path, f => f.Sha256, StringComparer.Ordinal);
        SortedSet<string> there = new(
            Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(folder, f).Replace('\\', '/')), StringComparer.Ordinal);
        there.Remove(ManifestEmitter.Path);
        foreach ((string path, string hash) in manifest.Files)
        {
            if (!there.Contains(path))
            {
                found.Add(VerifyFindings.FileMissing.At($"`{path}` is missing", "fetch an untouched copy of the job, or compile it again", location: At(folder, path)));
            }
            else if (WholeFile.Sha256(Path.Combine(folder, path)) != hash)
            {
                found.Add(VerifyFindings.FileChanged.At($"`{path}` is not the file that was compiled: its hash differs", "fetch an untouched copy of the job, or compile it again", location: At(folder, path)));
            }
        }

        found.AddRange(there.Where(path => !listed.ContainsKey(path)).Select(path =>
            VerifyFindings.FileUnlisted.At($"`{path}` is not of this job", "move it out of the job folder", location: At(folder, path))));
        IEnumerable<(string Path, string Sha256)> core2 = manifest.Held ? [] : core.DoseTables.Concat(core.DeliveredTables).Append(core.Sequence);
        foreach ((string path, string hash) in core2)
        {
            if (listed.GetValueOrDefault(path) != hash)
            {
                found.Add(VerifyFindings.FileChanged.At(
                    $"`{path}` is listed with another hash in {JobCoreEmitter.Path} than in {ManifestEmitter.Path}", "fetch an untouched copy of the job, or compile it again",
                    location: At(folder, path)));
            }
        }

        string[] tables = [.. listed.Keys.Where(path => path.StartsWith(DoseTableEmitter.ToPrint + "/", StringComparison.Ordinal) || path.StartsWith(DoseTableEmitter.Delivered + "/", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];
        if (!manifest.Held && !tables.SequenceEqual(core.DoseTables.Concat(core.DeliveredTables).Select(t => t.Path).Order(StringComparer.Ordinal)))
        {
            found.Add(VerifyFindings.FileMissing.At(
                $"{JobCoreEmitter.Path} names {core.DoseTables.Count + core.DeliveredTables.Count} dose tables, {ManifestEmitter.Path} lists {tables.Length}", "compile the unit again",
                location: At(folder, ManifestEmitter.Path)));
        }

        return found;
    }

    private static SourceLocation At(string folder, string path) => new(Path.Combine(folder, path), 0, 0);
}
