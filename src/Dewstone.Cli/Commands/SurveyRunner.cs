using System.Text;
using Dewstone.Cli.Rendering;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Folders;
using Dewstone.Jobs.Surveys;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Reading;
using Dewstone.Reading.Job;

namespace Dewstone.Cli.Commands;

/// <summary>Reads a job and what was measured of its unit, and surveys it. The job folder is never written to.</summary>
/// <param name="request">What was asked for.</param>
internal sealed class SurveyRunner(SurveyRequest request)
{
    private string Name
    {
        get
        {
            string name = Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(request.Job)));
            return name.EndsWith(JobFolder.Ready, StringComparison.Ordinal) ? name[..^JobFolder.Ready.Length] : name;
        }
    }

    /// <summary>Runs.</summary>
    /// <param name="progress">Told within.</param>
    /// <param name="cancellation">Asks for an orderly end.</param>
    /// <returns>What came of it.</returns>
    /// <exception cref="UsageException">The output would lie within the job folder.</exception>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public SurveyOutcome Run(IProgress<Progress> progress, CancellationToken cancellation)
    {
        if (request.OutputFolder is { } output)
        {
            if ((Path.GetFullPath(output) + Path.DirectorySeparatorChar).StartsWith(Path.TrimEndingDirectorySeparator(Path.GetFullPath(request.Job)) + Path.DirectorySeparatorChar, StringComparison.Ordinal))
            {
                throw new UsageException("-o lies within the job folder, which is only read; name another folder.");
            }

            if (SurveyFolder.Examine(output, Name) is { } obstacle)
            {
                return new SurveyOutcome(request.Job, null, [obstacle], null, ExitCode.CannotCreate);
            }
        }

        DiagnosticBag findings = new();
        if (Read(findings) is not { } question)
        {
            return new SurveyOutcome(request.Job, null, findings.Items, null, ExitCode.InputAtFault);
        }

        SurveyResult result = JobSurveyor.Survey(question, request.Parallelism, progress, cancellation);
        IReadOnlyList<Diagnostic> all = [.. findings.Items, .. result.Findings];
        if (result.IsInputAtFault)
        {
            return new SurveyOutcome(request.Job, null, all, null, ExitCode.InputAtFault);
        }

        SurveyOutcome outcome = new(request.Job, result, all, null, result.Verdict == Verdict.Release ? ExitCode.Done : ExitCode.No);
        return request.OutputFolder is null ? outcome : Write(outcome, request.OutputFolder, cancellation);
    }

    // The document names the folder it lies in by its name alone, so that its bytes are the same wherever it is written.
    private SurveyOutcome Write(SurveyOutcome outcome, string outputFolder, CancellationToken cancellation)
    {
        string document = SurveyJson.Of(outcome with { Job = Path.GetFileName(Path.TrimEndingDirectorySeparator(request.Job)), Folder = Name + SurveyFolder.Ending });
        JobFolderOutcome written = SurveyFolder.Write(
            outputFolder, Name, [.. outcome.Result!.Files, new EmittedFile(SurveyFolder.Document, Encoding.UTF8.GetBytes(document))], cancellation);
        return outcome with
        {
            Findings = [.. outcome.Findings, .. written.Findings],
            Folder = written.Status == JobFolderStatus.Written ? written.Path : null,
            ExitCode = ExitCode.Of(written.Status, outcome.ExitCode),
        };
    }

    private SurveyQuestion? Read(DiagnosticBag findings)
    {
        findings.AddRange(JobFolderRecovery.PutBack(request.Job));
        EarlierJob? job = EarlierJobReader.Read(request.Job, findings);
        Manifest? manifest = job is null ? null : JobManifest.Read(request.Job, findings);
        SurveyQuestion? question = job is null || manifest is null ? null : new SurveyQuestion
        {
            Job = job,
            Manifest = manifest,
            RunLog = Take(request.RunLog, SurveyReader.ReadRunLog, findings),
            Weights = Take(request.Weights, SurveyReader.ReadWeights, findings),
            Gauges = Take(request.Gauges, SurveyReader.ReadGauges, findings),
            WantsFiles = request.OutputFolder is not null,
            Scan = TakeScan(findings) is { } scan ? (request.Scan!, scan) : null,
        };
        return findings.HasErrors ? null : question;
    }

    private UnitScan? TakeScan(DiagnosticBag findings)
    {
        if (request.Scan is null)
        {
            return null;
        }

        FileReading<UnitScan> reading = SurveyReader.ReadScan(request.Scan);
        findings.AddRange(reading.Diagnostics);
        return reading.Value;
    }

    private static Measured<T>? Take<T>(string? file, Func<string, FileReading<IReadOnlyList<T>>> read, DiagnosticBag findings)
    {
        if (file is null)
        {
            return null;
        }

        FileReading<IReadOnlyList<T>> reading = read(file);
        findings.AddRange(reading.Diagnostics);
        return reading.Value is { } rows ? new Measured<T>(file, rows) : null;
    }
}
