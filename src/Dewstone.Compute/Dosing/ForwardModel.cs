using Dewstone.Compute.Sequencing;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>What a dose plan does: the machine's real times for it, then the wetting itself. Nothing in a correction guesses at either.</summary>
/// <param name="job">Printer, needles and mix.</param>
/// <param name="lattice">Needle positions.</param>
/// <param name="parallelism">Threads; no result depends on them.</param>
public sealed class ForwardModel(JobDescription job, Lattice lattice, Parallelism parallelism)
{
    private readonly BedProperties bed = BedProperties.From(job.Mix, job.LooseDensity, job.BedTemperature);

    /// <summary>Volumetric water content at which the mix sets, 1.</summary>
    public double ThresholdContent => bed.ThresholdContent;

    /// <summary>Content of a water/cement, 1.</summary>
    /// <param name="waterCement">Water/cement by mass, 1.</param>
    /// <returns>Volumetric water content, 1.</returns>
    public double Content(double waterCement) => waterCement * bed.BinderKilogramsPerCubicMetre / bed.LiquidKilogramsPerCubicMetre;

    /// <summary>Wets the bed with a plan.</summary>
    /// <param name="plan">Doses as rounded.</param>
    /// <param name="grid">Cells over the lattice.</param>
    /// <param name="cancellation">Looked at after each event.</param>
    /// <returns>What the water did.</returns>
    public MoistureResult Wet(DosePlan plan, CellGrid grid, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(grid);
        (_, DoseSchedule schedule) = TimelineBuilder.Build(job, lattice, plan);
        return WettingSolver.Solve(WettingProblem.Of(plan, grid, schedule, bed), parallelism, null, cancellation);
    }
}
