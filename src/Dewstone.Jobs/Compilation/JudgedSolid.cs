using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Habitat;
using Dewstone.Compute.Inspection;
using Dewstone.Compute.Seabed;
using Dewstone.Compute.Strength;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Compilation;

/// <summary>A predicted solid with all that is judged of it, the same whether it is to be printed, resumed or was run.</summary>
internal sealed record JudgedSolid
{
    /// <summary>The solid.</summary>
    public required Prediction Prediction { get; init; }

    /// <summary>What the checks measured.</summary>
    public required InspectionReport Inspection { get; init; }

    /// <summary>How strong it is and how it hangs; null when that cannot be told.</summary>
    public required StrengthReport? Strength { get; init; }

    /// <summary>How it stands at its site; null without one, or with absurd figures of it.</summary>
    public required StabilityReport? Sea { get; init; }

    /// <summary>What it offers as a place to live; null when nothing hardened.</summary>
    public required HabitatReport? Habitat { get; init; }

    /// <summary>What is required of the solid itself, and how it came out; not yet placed in the files.</summary>
    public required IReadOnlyList<RequirementResult> OfSolid { get; init; }

    /// <summary>What its site requires.</summary>
    public required IReadOnlyList<RequirementResult> OfSite { get; init; }

    /// <summary>Findings about it, in the order of the checks.</summary>
    public required IReadOnlyList<Diagnostic> Findings { get; init; }

    /// <summary>All that is required.</summary>
    public IReadOnlyList<RequirementResult> Requirements => [.. OfSolid, .. OfSite];

    /// <summary>Judges a solid.</summary>
    /// <param name="job">Unit, mix, printer and site.</param>
    /// <param name="shape">Wanted solid.</param>
    /// <param name="placement">Where it stands in the printer.</param>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="target">Wanted solid on the cells.</param>
    /// <param name="predicted">The solid.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>What is judged.</returns>
    public static JudgedSolid Of(
        JobDescription job, ReefShape shape, UnitPlacement placement, Lattice lattice, TargetField target, Prediction predicted, Parallelism parallelism,
        CancellationToken cancellation)
    {
        MoistureResult moisture = predicted.Moisture;
        RequirementReport requirements = RequirementCheck.Check(job, predicted.Solid, predicted.Estimate);
        InspectionReport inspection = null!;
        StrengthResult strength = null!;
        SeabedResult sea = null!;
        HabitatResult habitat = null!;
        // Each leaves a second thread idle part of the time; habitat and sea need nothing of the other two.
        Parallel.Invoke(
            new ParallelOptions { MaxDegreeOfParallelism = Math.Max(1, parallelism.Threads), CancellationToken = cancellation },
            () =>
            {
                inspection = Inspector.Inspect(job, shape, placement, target, moisture, predicted.Surface, predicted.Solid, parallelism, cancellation);
                strength = StrengthCheck.Check(
                    new StrengthQuestion
                    {
                        Job = job,
                        Placement = placement,
                        Moisture = moisture,
                        Solid = predicted.Solid,
                        LiftKilograms = predicted.Estimate.LiftKilograms,
                        Trapped = inspection.TrappedMix,
                    },
                    parallelism, cancellation);
            },
            () =>
            {
                habitat = HabitatSurvey.Survey(job, placement, predicted.Surface, parallelism);
                sea = SeabedSolver.Solve(job, moisture.Grid, moisture.Hardened, placement, predicted.Estimate, parallelism);
            });
        return new JudgedSolid
        {
            Prediction = predicted,
            Inspection = inspection,
            Strength = strength.Report,
            Sea = sea.Report,
            Habitat = habitat.Report,
            OfSolid = [.. requirements.Results, .. inspection.Requirements],
            OfSite = sea.Requirements,
            Findings =
            [
                .. WaterCheck.Check(placement, lattice, moisture), .. BlockedNeedleCheck.Check(job, shape, placement, lattice, target, moisture),
                .. requirements.Findings, .. inspection.Findings, .. strength.Findings, .. sea.Findings, .. habitat.Findings,
            ],
        };
    }
}
