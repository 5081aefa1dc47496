using Dewstone.Compute.Dosing;
using Dewstone.Jobs.Emission;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Compilation;

/// <summary>What the doses of a job come to beside the plain ones it could have had.</summary>
internal static class DoseComparison
{
    /// <summary>Sums up how the doses were found.</summary>
    /// <param name="dosing">The doses.</param>
    /// <param name="solid">What the doses give.</param>
    /// <param name="plainSolid">What plain doses give on the same cells; null when the doses are plain.</param>
    /// <param name="options">Whether they were corrected, and from what.</param>
    /// <returns>The summary.</returns>
    public static DosingSummary Summary(DoseResult dosing, SolidSummary solid, SolidSummary? plainSolid, CompileOptions options)
    {
        DoseFigures chosen = DoseFigures.Of(dosing.Doses, solid);
        DoseFigures plain = plainSolid is null ? chosen : DoseFigures.Of(dosing.Plain, plainSolid);
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
