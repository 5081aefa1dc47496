using Dewstone.Compute.Geometry;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>
/// The requirements of one drawing judged on many predicted solids: the figures of <see cref="RequirementCheck"/> and <see cref="Inspector"/> in their
/// order, without what nothing is required of. What follows from the drawing alone is computed once.
/// </summary>
public sealed class RequiredFigures
{
    private static readonly Parallelism OneThread = new(1);

    private readonly UnitPlacement placement;
    private readonly OpeningWay[] ways;

    /// <summary>Prepares a drawing.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="shape">Its shape.</param>
    /// <param name="placement">Where it stands.</param>
    /// <param name="target">Wanted solid on the cells.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    public RequiredFigures(ReefUnit unit, ReefShape shape, UnitPlacement placement, TargetField target, Parallelism parallelism)
    {
        ArgumentNullException.ThrowIfNull(unit);
        ArgumentNullException.ThrowIfNull(shape);
        this.placement = placement;
        int[] asked = [.. Enumerable.Range(0, shape.Named.Count).Where(opening => IsAsked(unit, shape.Named[opening]))];
        if (asked.Length == 0)
        {
            ways = [];
            return;
        }

        OpeningPassages passages = new(shape, placement, SolidField.Of(target, parallelism));
        ways = Array.ConvertAll(asked, passages.Way);
    }

    /// <summary>Judges a predicted solid, on one thread; several may be judged at a time.</summary>
    /// <param name="job">Unit, mix and printer of this solid.</param>
    /// <param name="moisture">What the water did, on the target's cells.</param>
    /// <param name="surface">Where the hardened solid ends.</param>
    /// <param name="summary">Figures of the solid.</param>
    /// <param name="estimate">Its masses.</param>
    /// <returns>The requirements: mass, water/cement, match, wall, loose pieces, trapped mix, clear openings, those that are asked.</returns>
    public IReadOnlyList<RequirementResult> Of(
        JobDescription job, MoistureResult moisture, HardenedSurface surface, SolidSummary summary, Estimate estimate)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(moisture);
        ArgumentNullException.ThrowIfNull(surface);
        Requirements require = job.Unit.Require;
        IReadOnlyList<RequirementResult> figures = RequirementCheck.Check(job, summary, estimate).Results;
        if (ways.Length == 0 && require.MinWall is null && require.MaxLoosePieces is null && require.MaxTrappedMix is null)
        {
            return figures;
        }

        SolidField hardened = SolidField.Of(surface, OneThread);
        PredictedSolid solid = new(moisture, hardened, placement, job.LooseDensity, OneThread);
        return
        [
            .. figures,
            .. require.MinWall is { } wall ? [NeckCheck.Judge(job, solid, wall.Metres).Result] : Array.Empty<RequirementResult>(),
            .. require.MaxLoosePieces is null ? [] : LoosePieceCheck.Check(job, solid).Requirements,
            .. require.MaxTrappedMix is null ? [] : TrappedMixCheck.Check(job, solid).Requirements,
            .. ClearOpeningCheck.Check(job.Unit, Array.ConvertAll(ways, way => way.Through(hardened))).Requirements,
        ];
    }

    private static bool IsAsked(ReefUnit unit, ShapeOpening opening) =>
        (opening.Tunnel >= 0 ? unit.Tunnels[opening.Tunnel].Clear : unit.Cavities[opening.Cavity].Clear) is not null;
}
