using System.Security.Cryptography;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Folders;
using Dewstone.Jobs.Resuming;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Reading;
using Dewstone.Reading.Files;
using Dewstone.Reading.Job;

namespace Dewstone.Cli.Commands;

/// <summary>Reads a stopped job, resumes it, and writes the job for the rest.</summary>
/// <param name="request">What was asked for.</param>
internal sealed class ResumeRunner(ResumeRequest request)
{
    private string Folder => Path.TrimEndingDirectorySeparator(Path.GetFullPath(request.Job));

    private string OutputFolder => request.OutputFolder
        ?? (Path.GetDirectoryName(Folder) is not { } parent ? Folder : Path.IsPathRooted(request.Job) ? parent : Path.GetRelativePath(Directory.GetCurrentDirectory(), parent));

    private string Name
    {
        get
        {
            string name = Path.GetFileName(Folder);
            name = name.EndsWith(JobFolder.Ready, StringComparison.Ordinal) ? name[..^JobFolder.Ready.Length] : name;
            return $"{name}.resumed-after-{request.AfterLayer:D3}{(request.Station is { } station ? $"-station-{station}" : "")}";
        }
    }

    /// <summary>Runs.</summary>
    /// <param name="progress">Told within.</param>
    /// <param name="cancellation">Asks for an orderly end.</param>
    /// <returns>What came of it.</returns>
    /// <exception cref="UsageException">The job cannot have been stopped there.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public ResumeOutcome Run(IProgress<Progress> progress, CancellationToken cancellation)
    {
        if (JobFolderWriter.Examine(OutputFolder, Name) is { } obstacle)
        {
            return new ResumeOutcome(request.Job, null, [obstacle], null, ExitCode.CannotCreate);
        }

        DiagnosticBag findings = new();
        if (Read(findings) is not { } question)
        {
            return new ResumeOutcome(request.Job, null, findings.Items, null, ExitCode.InputAtFault);
        }

        ResumeResult result = JobResumer.Resume(question, request.Parallelism, progress, cancellation);
        IReadOnlyList<Diagnostic> all = [.. findings.Items, .. result.Findings];
        return result.Job is { } job ? Write(result, job, all, progress, cancellation) : new ResumeOutcome(request.Job, null, all, null, ExitCode.InputAtFault);
    }

    private ResumeQuestion? Read(DiagnosticBag findings)
    {
        findings.AddRange(JobFolderRecovery.PutBack(request.Job));
        if (EarlierJobReader.Read(request.Job, findings) is not { } job)
        {
            return null;
        }

        if (JobManifest.Read(request.Job, findings) is not { } manifest)
        {
            return null;
        }

        if (StopCheck.Fault(job, request.AfterLayer, request.Station) is { } impossible)
        {
            throw new UsageException(impossible);
        }

        List<InputFile> inputs = [new("job", Path.GetFileName(Folder), Convert.ToHexStringLower(SHA256.HashData(job.CoreBytes.Span)))];
        NeedleTable? needles = Take(request.Needles, "needles", file => DescriptionReader.ReadNeedles(file, job.Core.Description.Printer.Head), inputs, findings);
        IReadOnlyList<DeliveredDose>? log = Take(request.RunLog, "run_log", DescriptionReader.ReadRunLog, inputs, findings);
        return findings.HasErrors ? null : new ResumeQuestion
        {
            Job = job,
            Manifest = manifest,
            AfterLayer = request.AfterLayer,
            Station = request.Station ?? 0,
            PauseMilliseconds = request.PauseMilliseconds,
            Needles = needles,
            RunLog = log,
            RunLogFile = request.RunLog ?? "",
            Inputs = inputs,
            Accept = request.Accept,
            ToolVersion = ToolVersion.Text,
        };
    }

    private static T? Take<T>(string? file, string role, Func<string, FileReading<T>> read, List<InputFile> inputs, DiagnosticBag findings)
        where T : class
    {
        if (file is null)
        {
            return null;
        }

        FileReading<T> reading = read(file);
        findings.AddRange(reading.Diagnostics);
        if (reading.Value is not null)
        {
            inputs.Add(new InputFile(role, Path.GetFileName(file), Convert.ToHexStringLower(SHA256.HashData(WholeFile.Read(file)))));
        }

        return reading.Value;
    }

    private ResumeOutcome Write(ResumeResult result, CompiledJob job, IReadOnlyList<Diagnostic> findings, IProgress<Progress> progress, CancellationToken cancellation)
    {
        progress.Report(new Progress("files", 1.0));
        using FilesInMaking files = new(request.Parallelism, cancellation);
        JobFolderOutcome written = JobFolderWriter.Write(
            new JobFolderOrder
            {
                OutputFolder = OutputFolder,
                Name = Name,
                Held = job.Held,
                Files = files.AsMade(job, file => Path.GetFileName(file), rawField: false),
            },
            cancellation);
        return new ResumeOutcome(
            request.Job, result, [.. findings, .. written.Findings], written.Status == JobFolderStatus.Written ? written.Path : null,
            ExitCode.Of(written.Status, job.Held ? ExitCode.No : ExitCode.Done));
    }
}
