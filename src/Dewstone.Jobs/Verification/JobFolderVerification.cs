using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Folders;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Reading.Files;
using Dewstone.Reading.Job;

namespace Dewstone.Jobs.Verification;

/// <summary>Proves that a job folder is what it claims to be: files by their hashes and schemas, the solid and the figures by simulating again from the tables alone.</summary>
public static class JobFolderVerification
{
    /// <summary>Verifies a job folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="approved">The approver's list; null for none.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="progress">Told within; may be null.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>What was found. A file that was changed is named by its hash, and the job is not simulated then.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static VerificationResult Verify(
        string folder, ApprovedDesigns? approved, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(folder);
        progress?.Report(new Progress("files", 0.0));
        List<Diagnostic> findings = [.. JobFolderRecovery.PutBack(folder)];
        if (ReadManifest(folder, findings) is not { } manifest)
        {
            return new VerificationResult { Folder = folder, Findings = findings };
        }

        VerificationResult Result(Manifest? claims) => new()
        {
            Folder = folder,
            Name = claims?.Name ?? "",
            JobFingerprint = claims?.JobFingerprint ?? "",
            DesignFingerprint = claims?.DesignFingerprint ?? "",
            Findings = findings,
        };
        try
        {
            string corePath = Path.Combine(folder, JobCoreEmitter.Path);
            if (!File.Exists(corePath) || !JobCoreReader.TryRead(WholeFile.Read(corePath), out JobCore? core, out string fault) || core is null)
            {
                findings.AddRange(SchemaCheck.Check(folder));
                Damaged(File.Exists(corePath) ? $"`{JobCoreEmitter.Path}` cannot be read" : $"`{JobCoreEmitter.Path}` is missing");
                return Result(manifest);
            }

            findings.AddRange(FileCheck.Check(folder, manifest, core));
            findings.AddRange(SchemaCheck.Check(folder));
            if (manifest.Held)
            {
                findings.Add(VerifyFindings.Held.At($"`{folder}` is held back: it has no dose tables", "mend what its findings say and compile again", location: new SourceLocation(folder, 0, 0)));
            }

            if (findings.Exists(f => f.Severity == Severity.Error))
            {
                return Result(manifest);
            }

            DiagnosticBag bag = new();
            if (EarlierJobReader.Read(folder, bag, bins: true) is not { } job)
            {
                findings.AddRange(bag.Items);
                return Result(manifest);
            }

            findings.AddRange(ReplayCheck.Check(job, manifest, parallelism, progress, cancellation));
            findings.AddRange(approved is null ? [] : ApprovalCheck.Check(job, manifest, approved));
        }
        catch (Exception broken) when (DiskFaults.IsDiskFault(broken))
        {
            Damaged(broken.Message.ReplaceLineEndings(" ").TrimEnd('.'));
        }

        return Result(manifest);

        void Damaged(string what) => findings.Add(
            JobFolderFindings.Damaged.At($"the job `{folder}` cannot be read: {what}", "fetch an untouched copy of the job, or compile it again", location: new SourceLocation(folder, 0, 0)));
    }

    private static Manifest? ReadManifest(string folder, List<Diagnostic> findings)
    {
        SourceLocation place = new(folder, 0, 0);
        string path = Path.Combine(folder, ManifestEmitter.Path);
        if (!File.Exists(path))
        {
            findings.Add(JobFolderFindings.NoSuchJob.At($"`{folder}` is no job folder: it holds no {ManifestEmitter.Path}", "name a folder that `dewstone compile` wrote", location: place));
            return null;
        }

        string fault;
        try
        {
            if (ManifestReader.TryRead(WholeFile.Read(path), out Manifest? manifest, out fault))
            {
                return manifest;
            }

            findings.AddRange(SchemaCheck.Check(folder));
        }
        catch (Exception broken) when (DiskFaults.IsDiskFault(broken))
        {
            fault = broken.Message.ReplaceLineEndings(" ").TrimEnd('.');
        }

        findings.Add(JobFolderFindings.Damaged.At($"the job `{folder}` cannot be read: {ManifestEmitter.Path}: {fault}", "fetch an untouched copy of the job, or compile it again", location: place));
        return null;
    }
}
