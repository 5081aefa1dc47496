using Dewstone.Compute.Dosing;
using Dewstone.Compute.Inspection;
using Dewstone.Compute.Sequencing;
using Dewstone.Compute.Wetting;
using Dewstone.Jobs.Emission;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Compilation;

/// <summary>What the doses of a job come to beside those it could have had.</summary>
internal static class DosePass
{
    /// <summary>Wets doses in the machine's real times.</summary>
    /// <param name="job">Mix and printer.</param>
    /// <param name="doses">The doses.</param>
    /// <param name="cells">Fine cells.</param>
    /// <param name="schedule">When water flows.</param>
    /// <param name="parallelism">Threads.</param>
    /// <param name="progress">Told within; may be null.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>What the water did.</returns>
    public static MoistureResult Wet(
        JobDescription job, DosePlan doses, CellGrid cells, DoseSchedule schedule, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        BedProperties bed = BedProperties.From(job.Mix, job.LooseDensity, job.BedTemperature);
        return WettingSolver.Solve(WettingProblem.Of(doses, cells, schedule, bed), parallelism, progress, cancellation);
    }

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
            (_, DoseSchedule schedule) = TimelineBuilder.Build(job, dosing.Plain.Lattice, dosing.Plain);
            MoistureResult moisture = Wet(job, dosing.Plain, target.Grid, schedule, parallelism, null, cancellation);
            plain = DoseFigures.Of(dosing.Plain, SolidMeasure.Measure(target, moisture, job.Unit.Require.WaterCement));
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
