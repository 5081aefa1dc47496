using Dewstone.Compute.Dosing;
using Dewstone.Jobs.Emission;
using Dewstone.Model.Description;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Compilation;

/// <summary>What the doses of a job come to beside the plain ones it could have had.</summary>
internal static class DoseComparison
{
    /// <summary>Sums up how the doses were found; plain doses are wetted on the same cells for comparison.</summary>
    /// <param name="job">Mix and printer.</param>
    /// <param name="dosing">The doses.</param>
    /// <param name="target">Wanted solid.</param>
    /// <param name="solid">What the doses give.</param>
    /// <param name="options">Whether they were corrected, and from what.</param>
    /// <param name="parallelism">Threads.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>The summary.</returns>
    public static DosingSummary Summary(
        JobDescription job, DoseResult dosing, TargetField target, SolidSummary solid, CompileOptions options, Parallelism parallelism, CancellationToken cancellation)
    {
        DoseFigures chosen = DoseFigures.Of(dosing.Doses, solid);
        DoseFigures plain = chosen;
        if (options.Correct)
        {
            plain = DoseFigures.Of(dosing.Plain, Prediction.Of(job, dosing.Plain, target, parallelism, null, cancellation).Solid);
        }

        int cells = dosing.History.Count == 0 ? 0 : dosing.History[^1].CellsPerPitch;
        DoseStep[] last = [.. dosing.History.Where(step => step.CellsPerPitch == cells)];
        double plainMisfit = last.Where(step => step.Kind == DoseStepKind.Plain).Select(step => step.Objective).DefaultIfEmpty(0.0).Min();
        return new DosingSummary
        {
            Corrected = options.Correct,
            PlainMillilitres = dosing.PlainMillilitres,
            Plain = plain,
            Chosen = chosen,
            Solves = dosing.History.Count,
            MisfitCells = cells,
            PlainMisfitLitres = plainMisfit,
            MisfitLitres = last.Select(step => step.Objective).DefaultIfEmpty(0.0).Min(),
            LikeFingerprint = options.Like is { } like ? Fingerprint.Of(like.CoreBytes.Span).ToString() : null,
        };
    }
}
