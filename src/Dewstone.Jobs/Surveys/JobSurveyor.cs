using Dewstone.Compute.Survey;
using Dewstone.Jobs.Compilation;
using Dewstone.Jobs.Emission;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Surveys;

/// <summary>The passes of a survey, in order. The job folder is only read.</summary>
public static class JobSurveyor
{
    /// <summary>Surveys a unit.</summary>
    /// <param name="question">The job and what was measured.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="progress">Told within; may be null.</param>
    /// <param name="cancellation">Looked at between and within passes.</param>
    /// <returns>What was found.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static SurveyResult Survey(SurveyQuestion question, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(question);
        DiagnosticBag findings = new();
        SurveyedJob job = SurveyedJob.Of(question.Job, question.Manifest, parallelism, progress, cancellation);
        JudgedSolid planned = job.Judge(question.Job.Doses, null, parallelism, progress, cancellation);
        RunSurveyResult? run = null;
        JudgedSolid asRunSolid = planned;
        if (question.RunLog is { } log && RunSurvey.Run(job, planned, log.Rows, log.File, findings, parallelism, progress, cancellation) is { } asRun)
        {
            (run, asRunSolid) = asRun;
            findings.AddRange(run.Findings);
        }

        WeightsReport? weights = question.Weights is { } weighed ? WeightsSurvey.Run(job, planned, weighed, findings, parallelism, cancellation) : null;
        IReadOnlyList<GaugedPlace> gauges = question.Gauges is { } gauged ? GaugeSurvey.Run(job, planned, gauged, findings) : [];
        (ScanSurveyResult Result, PredictedBody Body)? scan = question.Scan is not var (file, points) ? null : ScanSurvey.Run(
            job, asRunSolid, run?.Log.Delivered ?? question.Job.Doses, run?.Log.Schedule, points, file, findings, parallelism, progress, cancellation);
        IReadOnlyList<EmittedFile> files = !question.WantsFiles ? [] :
        [
            .. run is null ? [] : SurveyFiles.Plates(job, run, asRunSolid, parallelism),
            .. weights is null ? [] : SurveyFiles.Charts(job, weights),
            .. scan is not { } laid ? [] : SurveyFiles.Deviation(job, laid.Result, laid.Body, parallelism),
        ];
        return new SurveyResult { Name = question.Manifest.Name, Run = run, Weights = weights, Gauges = gauges, Scan = scan?.Result, Files = files, Findings = findings.Items };
    }
}
