using Dewstone.Compute.Survey;
using Dewstone.Jobs.Compilation;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Surveys;

/// <summary>Scale weights of many units of one job.</summary>
internal static class WeightsSurvey
{
    private const double DoseChange = 0.05;

    /// <summary>Runs.</summary>
    /// <param name="job">The job.</param>
    /// <param name="planned">Its solid as planned.</param>
    /// <param name="weights">The weights.</param>
    /// <param name="findings">Takes DW8343 when there are too few.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>What they say; null with a finding.</returns>
    public static WeightsReport? Run(
        SurveyedJob job, JudgedSolid planned, Measured<WeighedUnit> weights, DiagnosticBag findings, Parallelism parallelism, CancellationToken cancellation)
    {
        if (weights.Rows.Count < WeightsCheck.LeastUnits)
        {
            findings.Add(SurveyFileFindings.Empty.At(
                $"{weights.Rows.Count} weights are too few for a control chart", $"weigh {WeightsCheck.LeastUnits} units at least; the limits are provisional below twenty",
                location: new SourceLocation(weights.File, 1, 1)));
            return null;
        }

        double mass = planned.Prediction.Estimate.LiftKilograms;
        DosePlan more = DoseScale.Of(job.Job.Doses, 1.0 + DoseChange);
        double moreMass = Prediction.Of(job.Description, more, job.Target, parallelism, null, cancellation).Estimate.LiftKilograms;
        WeightsReport report = WeightsCheck.Check(new WeightsQuestion
        {
            Units = weights.Rows,
            File = weights.File,
            PredictedKilograms = mass,
            HardenedCubicMetres = planned.Prediction.Solid.HardenedCubicMetres,
            LooseKilogramsPerCubicMetre = job.Description.LooseDensity.KilogramsPerCubicMetre,
            MassPerDose = (moreMass - mass) / mass / DoseChange,
        });
        findings.AddRange(report.Findings);
        return report;
    }
}
