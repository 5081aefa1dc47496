using Dewstone.Compute.Dosing;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Compilation;

/// <summary>Leaves out doses that do more harm than good, and predicts again.</summary>
internal static class DosePruning
{
    /// <summary>Doses that set lumps of their own go; those at the needle's least on the unit's skin go too where the match does not suffer.</summary>
    /// <param name="job">What was asked for.</param>
    /// <param name="dosing">The doses as found.</param>
    /// <param name="target">Wanted solid.</param>
    /// <param name="parallelism">Threads.</param>
    /// <param name="progress">Told within; may be null.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>Doses kept, what they come to, and DW3016 when some were left out.</returns>
    public static (DoseResult Dosing, Prediction Predicted, IReadOnlyList<Diagnostic> Findings) Apply(
        JobDescription job, DoseResult dosing, TargetField target, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        DosePlan? skinless = StrayDoses.WithoutLeast(dosing.Doses, dosing.VoxelFractions, dosing.Limits);
        DosePlan kept = dosing.Doses;
        Prediction best = null!;
        Prediction? without = null;
        Parallel.Invoke(
            new ParallelOptions { MaxDegreeOfParallelism = Math.Max(1, parallelism.Threads), CancellationToken = cancellation },
            () => best = Prediction.Of(job, dosing.Doses, target, parallelism, progress, cancellation),
            () => without = skinless is null ? null : Prediction.Of(job, skinless, target, parallelism, null, cancellation));
        if (without is not null && without.Solid.ShapeMatch >= best.Solid.ShapeMatch)
        {
            (kept, best) = (skinless!, without);
        }

        if (StrayDoses.Without(kept, dosing.VoxelFractions, best.Moisture, parallelism) is { } joined)
        {
            (kept, best) = (joined, Prediction.Of(job, joined, target, parallelism, progress, cancellation));
        }

        int left = dosing.Doses.CentiMillilitres.Zip(kept.CentiMillilitres).Count(d => d.First != d.Second);
        return left == 0
            ? (dosing, best, [])
            : (dosing with { Doses = kept }, best,
                [
                    WettingFindings.StrayDoses.At(
                        $"{left} doses would only have set lumps of their own or little balls on the skin, and were left out", "nothing to do", new KeyPath(DescriptionKind.Unit, "box")),
                ]);
    }
}
