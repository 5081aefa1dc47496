using Dewstone.Compute.Geometry;
using Dewstone.Jobs.Compilation;
using Dewstone.Model.Description;
using Dewstone.Model.Results;
using Dewstone.Reading.Job;

namespace Dewstone.Jobs.Surveys;

/// <summary>The job a survey is about, read from its folder, with the wanted solid on its cells.</summary>
/// <param name="Job">Core and doses.</param>
/// <param name="Manifest">Its manifest.</param>
/// <param name="Shape">Wanted solid.</param>
/// <param name="Target">The same on the cells.</param>
internal sealed record SurveyedJob(EarlierJob Job, Manifest Manifest, ReefShape Shape, TargetField Target)
{
    /// <summary>What it was simulated with.</summary>
    public JobCore Core => Job.Core;

    /// <summary>What was asked for.</summary>
    public JobDescription Description => Job.Core.Description;

    /// <summary>Prepares a job.</summary>
    /// <param name="job">Core and doses.</param>
    /// <param name="manifest">Its manifest.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="progress">Told within; may be null.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>The job.</returns>
    public static SurveyedJob Of(EarlierJob job, Manifest manifest, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        ReefShape shape = ReefShapeBuilder.Build(job.Core.Description.Unit).Shape;
        return new SurveyedJob(job, manifest, shape, Voxelizer.Voxelize(shape, job.Core.Placement, job.Core.Cells, parallelism, progress, cancellation));
    }

    /// <summary>Predicts and judges the solid of some doses.</summary>
    /// <param name="doses">The doses.</param>
    /// <param name="asRun">Times as run; null for those planned.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="progress">Told within; may be null.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>The solid.</returns>
    public JudgedSolid Judge(DosePlan doses, DoseSchedule? asRun, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation) =>
        JudgedSolid.Of(
            Description, Shape, Core.Placement, Core.Lattice, Target, Prediction.Of(Description, doses, Target, parallelism, progress, cancellation, asRun), parallelism,
            cancellation);
}
