using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>Corrects the doses of units that would not come out of their bin as they were designed, against the wetting of the whole bin.</summary>
/// <remarks>
/// Wanted is what the unit's own doses give when it is printed alone by an ideal head, cell by cell on the cells the unit is judged by: whatever the cells
/// themselves do wrong stands on both sides, and the correction answers only for blocked needles and for the stations' times. Objective and step are those of
/// <see cref="CorrectionRule"/>, every cell of the unit weighing alike, water without a price, and a cell all but set or not, as the judge sees it: with the
/// soft edge of the unit's own correction the worst of twelve small units over four stations ended at an overlap of 99.47 instead of 99.55 %. Near blocked needles only
/// the doses within three pitches of them move; where the head works from several stations all doses of the unit do. Common practice, no source.
/// </remarks>
public static class BinDoseSolver
{
    /// <summary>Most wettings of the bin that it takes.</summary>
    public const int Solves = 14;

    private static readonly CorrectionRule Rule = new() { DryShare = 0.9, SetShare = 1.1, Gain = 2.0, WaterPrice = 0.0, BandPrice = 0.0, BlockedWeight = 1.0 };

    /// <summary>How much of a cell counts as hardened at a water content.</summary>
    /// <param name="content">Volumetric water content, 1.</param>
    /// <param name="thresholdContent">Content at which the mix sets, 1.</param>
    /// <returns>0 to 1.</returns>
    public static float HardenedShare(float content, double thresholdContent) =>
        Math.Clamp((content - (float)(Rule.DryShare * thresholdContent)) / (float)((Rule.SetShare - Rule.DryShare) * thresholdContent), 0f, 1f);

    /// <summary>Which doses may move for the sake of some units.</summary>
    /// <param name="job">Printer and needles.</param>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="isTheirs">Positions that water these units.</param>
    /// <returns>True where the dose may move; index order of the lattice.</returns>
    public static bool[] MayMove(JobDescription job, Lattice lattice, bool[] isTheirs)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(lattice);
        ArgumentNullException.ThrowIfNull(isTheirs);
        DoseRounder rounder = new(job, lattice);
        bool[] lost = [.. isTheirs.Select((theirs, i) => theirs && rounder.IsBlocked(i))];
        bool everywhere = Stations.Over(job.Printer).Count > 1 || !lost.Contains(true);
        bool[] near = everywhere ? isTheirs : DoseNeighbourhood.Of(lattice, lost);
        return [.. isTheirs.Select((theirs, i) => theirs && near[i] && !rounder.IsBlocked(i))];
    }

    /// <summary>Finds the doses.</summary>
    /// <param name="job">The bin as one job.</param>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="millilitres">Doses of all units as solved, mL; index order of the lattice.</param>
    /// <param name="mayMove">Doses that may move.</param>
    /// <param name="wanted">Hardened shares that are wanted.</param>
    /// <param name="weights">Weight of each cell, 1; 0 where nothing is wanted otherwise.</param>
    /// <param name="parallelism">Threads; no bit of the result depends on them.</param>
    /// <param name="progress">Told after each solve; may be null.</param>
    /// <param name="cancellation">Looked at within each solve.</param>
    /// <returns>Doses as rounded, on its cells no worse than those given; the others as they were.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static DosePlan Solve(
        JobDescription job, Lattice lattice, double[] millilitres, bool[] mayMove, TargetField wanted, float[] weights, Parallelism parallelism,
        IProgress<Progress>? progress, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(lattice);
        ArgumentNullException.ThrowIfNull(millilitres);
        DoseRounder rounder = new(job, lattice);
        CorrectionLevel level = new(
            job, CorrectionField.Given(wanted, weights), lattice, rounder, new ForwardModel(job, lattice, parallelism), NominalDose.Choose(job, lattice), Rule,
            parallelism);
        ProximityCorrection correction = new(
            rounder, new DoseWishes([.. millilitres], mayMove, null), Rule, 0.0, new DoseHistory(Solves, progress));
        correction.Iterate(level, Solves, isLast: true, cancellation);
        return correction.Best!;
    }
}
