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
    /// <summary>Runs.</summary>
    /// <param name="progress">Told within.</param>
    /// <param name="cancellation">Asks for an orderly end.</param>
    /// <returns>What came of it.</returns>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public SurveyOutcome Run(IProgress<Progress> progress, CancellationToken cancellation)
    {
        DiagnosticBag findings = new();
        if (Read(findings) is not { } question)
        {
            return new SurveyOutcome(request.Job, null, findings.Items, null, ExitCode.InputAtFault);
        }

        SurveyResult result = JobSurveyor.Survey(question, request.Parallelism, progress, cancellation);
        IReadOnlyList<Diagnostic> all = [.. findings.Items, .. result.Findings];
        return result.IsInputAtFault
            ? new SurveyOutcome(request.Job, null, all, null, ExitCode.InputAtFault)
            : new SurveyOutcome(request.Job, result, all, null, result.Verdict == Verdict.Release ? ExitCode.Done : ExitCode.No);
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
