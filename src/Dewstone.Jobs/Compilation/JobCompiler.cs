using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Sequencing;
using Dewstone.Compute.Studies;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Reading;

namespace Dewstone.Jobs.Compilation;

/// <summary>The passes from a description to a compiled job, in order, and nothing else. Everything after the doses is computed from the doses as rounded.</summary>
public static class JobCompiler
{
    /// <summary>Compiles one unit.</summary>
    /// <param name="read">The description as read, its findings included.</param>
    /// <param name="options">How.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="progress">Told after each pass and within the long ones; may be null.</param>
    /// <param name="cancellation">Looked at between and within passes.</param>
    /// <returns>The job, or the findings that stopped it.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    /// <exception cref="InvalidOperationException">An invariant between passes is broken: a fault of the program.</exception>
    public static CompileResult Compile(
        ReadResult read, CompileOptions options, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(read);
        ArgumentNullException.ThrowIfNull(options);
        FindingList findings = new(read.Sources, options.Accept);
        findings.AddRange(read.Diagnostics);
        if (findings.Stop || read.Job is not { } job)
        {
            return findings.WithoutJob();
        }

        ShapeResult shape = ReefShapeBuilder.Build(job.Unit);
        findings.AddRange(shape.Diagnostics);
        findings.AddRange(ShapeCheck.Check(job.Unit, shape.Shape, job.Printer.Grid.Pitch.Metres, job.Printer.Grid.LayerHeight.Metres));
        Registration registration = Register(job, shape.Shape, options, findings.Stop, parallelism, progress, cancellation);
        findings.AddRange(registration.Findings);
        PlacementResult place = Placer.Place(job, options.CellsPerVoxel, registration.Wish, options.LeastLayers);
        findings.AddRange(place.Findings);
        if (findings.Stop || options.DrawingOnly || place is not { Placement: { } placement, Lattice: { } lattice, Cells: { } cells })
        {
            return findings.WithoutJob();
        }

        TargetField target = Voxelizer.Voxelize(shape.Shape, placement, cells, parallelism, progress, cancellation);
        DoseSolverOptions dosingOptions = new() { Correct = options.Correct };
        if (options.Like is { } earlier)
        {
            DiagnosticBag likeFindings = new();
            dosingOptions = EarlierDoses.Options(dosingOptions, job, lattice, earlier, likeFindings) ?? dosingOptions;
            findings.AddRange(likeFindings.Items);
            if (findings.Stop)
            {
                return findings.WithoutJob();
            }
        }

        DoseResult dosing = DoseSolver.Solve(job, shape.Shape, placement, lattice, dosingOptions, parallelism, progress, cancellation);
        findings.AddRange(dosing.Findings);
        findings.AddRange(SupplyCheck.Check(job, lattice, dosing.Doses, TimelineBuilder.Build(job, lattice, dosing.Doses).Timeline));
        if (findings.Stop)
        {
            return findings.WithoutJob();
        }

        findings.AddRange(LimitsCheck.Window(job, lattice, dosing.Nominal.ClosingMillilitres));
        IReadOnlyList<Diagnostic> tooSmall = [], pruned = [];
        SolidSummary? plain = null;
        Prediction predicted = null!;
        DoseResult found = dosing;
        // One wetting leaves a second thread idle half the time; these three need nothing of each other.
        Parallel.Invoke(
            new ParallelOptions { MaxDegreeOfParallelism = Math.Max(1, parallelism.Threads), CancellationToken = cancellation },
            () => (dosing, predicted, pruned) = options.Correct
                ? DosePruning.Apply(job, found, target, parallelism, progress, cancellation)
                : (found, Prediction.Of(job, found.Doses, target, parallelism, progress, cancellation), []),
            () => plain = options.Correct ? Prediction.Of(job, found.Plain, target, parallelism, null, cancellation).Solid : null,
            () => tooSmall = LimitsCheck.Features(job, shape.Shape, lattice.ShiftedLayers, found.Nominal.ClosingMillilitres, parallelism, cancellation));
        findings.AddRange(tooSmall);
        findings.AddRange(pruned);
        PredictedJob known = new()
        {
            Description = job,
            Registration = registration,
            Placement = placement,
            Lattice = lattice,
            Target = target,
            Doses = dosing.Doses,
            Dosing = DoseComparison.Summary(dosing, predicted.Solid, plain, options),
            Timeline = predicted.Timeline,
            Schedule = predicted.Schedule,
            Moisture = predicted.Moisture,
            Solid = predicted.Solid,
            Estimate = predicted.Estimate,
            Inputs = read.Inputs,
            ToolVersion = options.ToolVersion,
        };
        options.Predicted?.Invoke(known);

        progress?.Report(new Progress("inspection", 0.0));
        JudgedSolid judged = JudgedSolid.Of(job, shape.Shape, placement, lattice, target, predicted, parallelism, cancellation);
        findings.AddRange(judged.Findings);
        TrialsReport? trials = options.Trials == 0 ? null : TrialsStudy.Run(
            new TrialsQuestion
            {
                Job = job,
                Shape = shape.Shape,
                Placement = placement,
                Doses = dosing.Doses,
                Timeline = predicted.Timeline,
                Schedule = predicted.Schedule,
                Requirements = findings.Place(judged.OfSolid),
                Trials = options.Trials,
                Spreads = TrialSpreads.Of(job),
                Cells = Math.Min(TrialsQuestion.DefaultCells, options.CellsPerVoxel),
            },
            parallelism, progress, cancellation);
        findings.AddRange(trials is null ? [] : TrialsCheck.Check(trials));

        CompiledJob compiled = new(known, findings.Place(judged.Requirements), findings.Items)
        {
            Inspection = judged.Inspection,
            Strength = judged.Strength,
            Sea = judged.Sea,
            Habitat = judged.Habitat,
            Trials = trials,
            Accepted = options.Accept,
        };
        JobVerifier.Verify(compiled);
        return new CompileResult(compiled, compiled.Findings);
    }

    // Where the unit stands: as an earlier job stood, as its file says, or where its corrected doses serve best.
    private static Registration Register(
        JobDescription job, ReefShape shape, CompileOptions options, bool hasErrors, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        if ((options.Wish ?? (options.Like is { } like ? EarlierDoses.Placement(job, like) : null)) is { } wish)
        {
            return new Registration { Wish = wish, Fixed = true };
        }

        // Half a pitch is no whole number of cells when they are odd.
        bool straightOnly = options.CellsPerVoxel % 2 != 0 && job.Unit.Place.ShiftedLayers is null;
        JobDescription asked = straightOnly ? job with { Unit = job.Unit with { Place = job.Unit.Place with { ShiftedLayers = false } } } : job;
        return hasErrors
            ? new Registration { Wish = job.Unit.Place, Fixed = true }
            : options.DrawingOnly ? Registrar.Fit(asked, shape, parallelism, cancellation) : Registrar.Choose(asked, shape, parallelism, progress, cancellation);
    }
}
