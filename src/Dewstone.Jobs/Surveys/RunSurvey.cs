using System.Globalization;
using Dewstone.Compute.Survey;
using Dewstone.Jobs.Compilation;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Surveys;

/// <summary>The doses as run: what the log shows, the solid they give, and whether it is still what was required.</summary>
internal static class RunSurvey
{
    /// <summary>Runs.</summary>
    /// <param name="job">The job.</param>
    /// <param name="planned">Its solid as planned.</param>
    /// <param name="log">Rows of the log.</param>
    /// <param name="file">The log's file.</param>
    /// <param name="findings">Takes DW8344 when the log does not belong to the job.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="progress">Told within; may be null.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>The result, and the solid as run; null when the log does not belong to the job.</returns>
    public static (RunSurveyResult Result, JudgedSolid AsRun)? Run(
        SurveyedJob job, JudgedSolid planned, IReadOnlyList<LoggedDose> log, string file, DiagnosticBag findings, Parallelism parallelism,
        IProgress<Progress>? progress, CancellationToken cancellation)
    {
        RunLogReport report = RunLogCheck.Check(new RunLogQuestion
        {
            Job = job.Description,
            Placement = job.Core.Placement,
            Planned = job.Job.Doses,
            Schedule = planned.Prediction.Schedule,
            WindowSeconds = job.Core.WindowSeconds,
            Rows = log,
            File = file,
        });
        if (report.Delivered is not { } delivered)
        {
            findings.AddRange(report.Findings);
            return null;
        }

        JudgedSolid asRun = job.Judge(delivered, report.Schedule, parallelism, progress, cancellation);
        IReadOnlyList<Diagnostic> ofSolid = report.IsFinished ? OfSolid(job, planned, asRun) : [];
        return (new RunSurveyResult
        {
            Log = report,
            Planned = planned.Prediction.Solid,
            AsRun = asRun.Prediction.Solid,
            PlannedKilograms = planned.Prediction.Estimate.LiftKilograms,
            AsRunKilograms = asRun.Prediction.Estimate.LiftKilograms,
            RequirementsPlanned = planned.Requirements,
            RequirementsAsRun = asRun.Requirements,
            Layers = LayerChange.Between(job.Core.Cells, planned.Prediction.Moisture.Hardened, asRun.Prediction.Moisture.Hardened),
            Findings = [.. report.Findings, .. ofSolid],
            Verdict = ofSolid.Any(f => f.Severity == Severity.Error) ? Verdict.Scrap : report.Findings.Any(f => f.Severity == Severity.Error) ? Verdict.Hold : Verdict.Release,
        }, asRun);
    }

    private static IReadOnlyList<Diagnostic> OfSolid(SurveyedJob job, JudgedSolid planned, JudgedSolid asRun)
    {
        RequirementResult[] lost = [.. asRun.Requirements.Where(now => !now.Met && planned.Requirements.Any(was => was.Met && was.Id == now.Id && was.Feature == now.Feature))];
        return
        [
            .. lost.Select(Lost),
            .. asRun.Findings.Where(now => !Array.Exists(lost, l => l.Key == now.Key) && !planned.Findings.Any(was => was.Code == now.Code && was.Key == now.Key))
                .Select(f => job.Manifest.Accepted.FirstOrDefault(a => a.Code == f.Code) is { } released ? f with { AcceptedBecause = released.Reason, Severity = Severity.Warning } : f),
        ];
    }

    private static Diagnostic Lost(RequirementResult now) => SurveyFindings.RequirementLost.At(
        string.Create(
            CultureInfo.InvariantCulture,
            $"{now.Quantity}{(now.Feature.Length == 0 ? "" : $" of {now.Feature}")} is {now.Value:0.####} as run where {now.Op} {now.Limit:0.####} is required; it was met as planned"),
        "scrap the unit, or have it judged and measure it when it is dug out", now.Key);
}
