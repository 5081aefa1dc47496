using Dewstone.Compute.Estimation;
using Dewstone.Compute.Inspection;
using Dewstone.Compute.Numerics;
using Dewstone.Compute.Sequencing;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Compilation;

/// <summary>What doses as rounded come to: the machine's steps, the water, the solid, the materials. Nothing but the description and the doses decides it.</summary>
/// <param name="Timeline">The machine's steps.</param>
/// <param name="Schedule">When water flows where.</param>
/// <param name="Moisture">What the water did.</param>
/// <param name="Surface">Where the predicted solid ends.</param>
/// <param name="Solid">Figures of the predicted solid.</param>
/// <param name="Estimate">Materials, carbon, cost, time.</param>
internal sealed record Prediction(
    Timeline Timeline, DoseSchedule Schedule, MoistureResult Moisture, HardenedSurface Surface, SolidSummary Solid, Estimate Estimate)
{
    /// <summary>Predicts.</summary>
    /// <param name="job">Unit, mix and printer.</param>
    /// <param name="doses">The doses.</param>
    /// <param name="target">Wanted solid on the cells.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="progress">Told within; may be null.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <param name="asRun">Times at which the water really flowed; null for those of the timeline.</param>
    /// <returns>The prediction.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static Prediction Of(
        JobDescription job, DosePlan doses, TargetField target, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation,
        DoseSchedule? asRun = null)
    {
        Lattice lattice = doses.Lattice;
        (Timeline timeline, DoseSchedule planned) = TimelineBuilder.Build(job, lattice, doses);
        DoseSchedule schedule = asRun ?? planned;
        BedProperties bed = BedProperties.From(job.Mix, job.LooseDensity, job.BedTemperature);
        MoistureResult moisture = WettingSolver.Solve(WettingProblem.Of(doses, target.Grid, schedule, bed), parallelism, progress, cancellation);
        HardenedSurface surface = HardenedSurface.Of(moisture, bed.Law, parallelism);
        SolidSummary solid = SolidMeasure.Measure(target, moisture, surface, job.Unit.Require.WaterCement);
        return new Prediction(timeline, schedule, moisture, surface, solid, Estimator.Estimate(job, lattice, solid, doses, timeline));
    }
}
