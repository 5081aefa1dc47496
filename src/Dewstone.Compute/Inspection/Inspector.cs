using Dewstone.Compute.Geometry;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>Runs all checks of the predicted solid: on what sets, not on what was drawn.</summary>
public static class Inspector
{
    /// <summary>Inspects.</summary>
    /// <param name="job">What was asked for.</param>
    /// <param name="shape">Wanted solid.</param>
    /// <param name="placement">Where it stands.</param>
    /// <param name="target">Wanted solid on the cells.</param>
    /// <param name="moisture">What the water did, on the same cells.</param>
    /// <param name="surface">Where the hardened solid ends.</param>
    /// <param name="summary">Figures of the predicted solid.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="cancellation">Looked at between checks.</param>
    /// <returns>Figures, requirements and findings.</returns>
    /// <exception cref="ArgumentException">Target and moisture on different cells.</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static InspectionReport Inspect(
        JobDescription job, ReefShape shape, UnitPlacement placement, TargetField target, MoistureResult moisture, HardenedSurface surface, SolidSummary summary,
        Parallelism parallelism, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentNullException.ThrowIfNull(placement);
        ArgumentNullException.ThrowIfNull(target);
        ArgumentNullException.ThrowIfNull(moisture);
        ArgumentNullException.ThrowIfNull(surface);
        ArgumentNullException.ThrowIfNull(summary);
        if (target.Fraction.Length != moisture.Grid.Count)
        {
            throw new ArgumentException($"The target has {target.Fraction.Length} cells, the moisture {moisture.Grid.Count}.", nameof(target));
        }

        SolidField wanted = SolidField.Of(target, parallelism);
        SolidField hardened = SolidField.Of(surface, parallelism);
        PredictedSolid solid = new(moisture, hardened, placement, job.LooseDensity, parallelism);
        OpeningPassage[] passages = new OpeningPassages(shape, placement, wanted).Measure(hardened, parallelism);
        Checked<LoosePiecesReport>? loose = null;
        Checked<WallReport>? wall = null;
        Checked<TrappedMixReport>? trapped = null;
        Checked<WaterCementReport?>? waterCement = null;
        Checked<IReadOnlyList<SoundZone>>? zones = null;
        SurfaceDeviationReport? deviation = null;
        Action[] checks =
        [
            () => deviation = SurfaceDeviation.Measure(shape, placement, wanted, hardened, DryPockets.Of(target, solid.Voids), parallelism),
            () => wall = NeckCheck.Check(job, solid),
            () => trapped = TrappedMixCheck.Check(job, solid),
            () => waterCement = WaterCementCheck.Check(job, solid),
            () => loose = LoosePieceCheck.Check(job, solid),
            () => zones = SoundZoneCheck.Check(job, shape, wanted, solid),
        ];
        Chunks.Run(checks.Length, 1, parallelism, (first, _) =>
        {
            if (!cancellation.IsCancellationRequested)
            {
                checks[first]();
            }
        });
        cancellation.ThrowIfCancellationRequested();
        Checked<IReadOnlyList<ClearOpening>> clear = ClearOpeningCheck.Check(job.Unit, passages);
        Checked<IReadOnlyList<AnimalTrap>> traps = AnimalTrapCheck.Check(job, passages);
        return new InspectionReport
        {
            LoosePieces = loose!.Report,
            Wall = wall!.Report,
            TrappedMix = trapped!.Report,
            ClearOpenings = clear.Report,
            WaterCement = waterCement!.Report,
            ShapeMatch = ShapeMatchCheck.Check(summary, deviation!, job.LooseDensity),
            SoundZones = zones!.Report,
            AnimalTraps = traps.Report,
            Requirements = [.. wall.Requirements, .. loose.Requirements, .. trapped.Requirements, .. clear.Requirements],
            Findings =
            [
                .. loose.Findings, .. wall.Findings, .. trapped.Findings, .. clear.Findings, .. waterCement.Findings, .. zones.Findings, .. traps.Findings,
            ],
        };
    }
}
