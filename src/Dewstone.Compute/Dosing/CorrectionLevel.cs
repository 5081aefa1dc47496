using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>One fineness of cells: judges dose plans on it by wetting them, and says what each needle's surroundings lack.</summary>
internal sealed class CorrectionLevel
{
    private readonly ForwardModel forward;
    private readonly CorrectionField wanted;
    private readonly DoseMisfit misfit;
    private readonly NeedleMisfit needles;

    /// <summary>A level.</summary>
    /// <param name="job">Unit and mix.</param>
    /// <param name="shape">Wanted solid.</param>
    /// <param name="placement">Where it stands.</param>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="rounder">Knows the blocked needles.</param>
    /// <param name="forward">The wetting.</param>
    /// <param name="nominal">Dose of a full voxel.</param>
    /// <param name="rule">The objective.</param>
    /// <param name="cellsPerPitch">Cells a pitch.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="cancellation">Looked at once a slab.</param>
    public CorrectionLevel(
        JobDescription job, ReefShape shape, UnitPlacement placement, Lattice lattice, DoseRounder rounder, ForwardModel forward, NominalDose nominal,
        CorrectionRule rule, int cellsPerPitch, Parallelism parallelism, CancellationToken cancellation)
        : this(
            job,
            CorrectionField.Over(
                shape, placement, CellGrid.Over(lattice, cellsPerPitch), job.Unit.Relief?.Amplitude.Metres ?? 0.0, rule, parallelism, cancellation),
            lattice, rounder, forward, nominal, rule, parallelism)
    {
    }

    /// <summary>A level over a field that was laid before.</summary>
    /// <param name="job">Unit and mix.</param>
    /// <param name="wanted">Wanted solid and weights over the lattice; the voxels of blocked needles are stressed in it.</param>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="rounder">Knows the blocked needles.</param>
    /// <param name="forward">The wetting.</param>
    /// <param name="nominal">Dose of a full voxel.</param>
    /// <param name="rule">The objective.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    public CorrectionLevel(
        JobDescription job, CorrectionField wanted, Lattice lattice, DoseRounder rounder, ForwardModel forward, NominalDose nominal, CorrectionRule rule,
        Parallelism parallelism)
    {
        this.forward = forward;
        this.wanted = wanted;
        misfit = new DoseMisfit(wanted, rule, forward, nominal, job.Unit.Require.WaterCement?.Max, parallelism);
        needles = new NeedleMisfit(lattice, wanted, rule.ReachPitches, parallelism);
        Fractions = VoxelFractions.Average(lattice, wanted.Target);
        for (int i = 0; i < Fractions.Length; i++)
        {
            if (Fractions[i] > 0.0 && rounder.IsBlocked(i))
            {
                wanted.Stress(lattice, i, rule.BlockedWeight);
            }
        }
    }

    /// <summary>Cells a pitch.</summary>
    public int CellsPerPitch => wanted.Grid.CellsPerPitch;

    /// <summary>The wanted solid.</summary>
    public TargetField Target => wanted.Target;

    /// <summary>Wanted share of each voxel, 0 to 1; index order of the lattice.</summary>
    public double[] Fractions { get; }

    /// <summary>Wets a plan and judges it.</summary>
    /// <param name="plan">Doses as rounded.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>The objective, litres.</returns>
    public double Judge(DosePlan plan, CancellationToken cancellation) => misfit.Evaluate(forward.Wet(plan, wanted.Grid, cancellation));

    /// <summary>What the surroundings of each needle lacked at the last judging.</summary>
    /// <param name="isFree">Positions wanted.</param>
    /// <param name="misfits">Receives them, 1; above 0 where water is missing.</param>
    public void Gather(bool[] isFree, double[] misfits) => needles.Gather(misfit.Weighted, isFree, misfits);

    /// <summary>How much is wanted around each needle, by the weights and the reach of the misfit.</summary>
    /// <param name="isFree">Positions wanted.</param>
    /// <param name="shares">Receives the shares, 0 to 1.</param>
    public void GatherWanted(bool[] isFree, double[] shares)
    {
        var weighted = new float[wanted.Weights.Length];
        for (int i = 0; i < weighted.Length; i++)
        {
            weighted[i] = wanted.Weights[i] * wanted.Target.Fraction[i];
        }

        needles.Gather(weighted, isFree, shares);
    }
}
