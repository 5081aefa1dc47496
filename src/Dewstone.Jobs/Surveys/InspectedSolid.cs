using Dewstone.Compute.Dosing;
using Dewstone.Compute.Habitat;
using Dewstone.Compute.Inspection;
using Dewstone.Compute.Seabed;
using Dewstone.Compute.Strength;
using Dewstone.Jobs.Compilation;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Surveys;

/// <summary>A solid, as planned or as run, with all that is found about it.</summary>
/// <param name="Prediction">The solid.</param>
/// <param name="Inspection">What the checks measured.</param>
/// <param name="Requirements">What is required and how it came out.</param>
/// <param name="Findings">Findings about it.</param>
internal sealed record InspectedSolid(
    Prediction Prediction, InspectionReport Inspection, IReadOnlyList<RequirementResult> Requirements, IReadOnlyList<Diagnostic> Findings)
{
    /// <summary>Predicts and inspects.</summary>
    /// <param name="job">The job, with what is wanted.</param>
    /// <param name="doses">Doses.</param>
    /// <param name="asRun">Times as run; null for those planned.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="progress">Told within; may be null.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>The solid.</returns>
    public static InspectedSolid Of(
        SurveyedJob job, DosePlan doses, DoseSchedule? asRun, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        Prediction predicted = Prediction.Of(job.Description, doses, job.Target, parallelism, progress, cancellation, asRun);
        RequirementReport requirements = RequirementCheck.Check(job.Description, predicted.Solid, predicted.Estimate);
        InspectionReport inspection = Inspector.Inspect(
            job.Description, job.Shape, job.Core.Placement, job.Target, predicted.Moisture, predicted.Surface, predicted.Solid, parallelism, cancellation);
        StrengthResult strength = StrengthCheck.Check(
            new StrengthQuestion
            {
                Job = job.Description,
                Placement = job.Core.Placement,
                Moisture = predicted.Moisture,
                Solid = predicted.Solid,
                LiftKilograms = predicted.Estimate.LiftKilograms,
                Trapped = inspection.TrappedMix,
            },
            parallelism, cancellation);
        SeabedResult sea = SeabedSolver.Solve(job.Description, predicted.Moisture.Grid, predicted.Moisture.Hardened, job.Core.Placement, predicted.Estimate, parallelism);
        return new InspectedSolid(
            predicted, inspection, [.. requirements.Results, .. inspection.Requirements, .. sea.Requirements],
            [
                .. WaterCheck.Check(job.Core.Placement, job.Core.Lattice, predicted.Moisture),
                .. BlockedNeedleCheck.Check(job.Description, job.Shape, job.Core.Placement, job.Core.Lattice, job.Target, predicted.Moisture),
                .. requirements.Findings, .. inspection.Findings, .. strength.Findings, .. sea.Findings,
                .. HabitatSurvey.Survey(job.Description, job.Core.Placement, predicted.Surface, parallelism).Findings,
            ]);
    }
}
