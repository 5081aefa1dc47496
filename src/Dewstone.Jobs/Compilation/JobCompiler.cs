using Dewstone.Compute.Dosing;
using Dewstone.Compute.Estimation;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Inspection;
using Dewstone.Compute.Sequencing;
using Dewstone.Compute.Studies;
using Dewstone.Compute.Wetting;
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
        PlacementResult place = Placer.Place(job, options.CellsPerVoxel);
        findings.AddRange(place.Findings);
        if (findings.Stop || options.DrawingOnly || place is not { Placement: { } placement, Lattice: { } lattice, Cells: { } cells })
        {
            return findings.WithoutJob();
        }

        TargetField target = Voxelizer.Voxelize(shape.Shape, placement, cells, parallelism, progress, cancellation);
        DoseResult dosing = PlainDoser.Dose(job, lattice, target);
        (Timeline timeline, DoseSchedule schedule) = TimelineBuilder.Build(job, lattice, dosing.Doses);
        findings.AddRange(dosing.Findings);
        findings.AddRange(SupplyCheck.Check(job, lattice, dosing.Doses, timeline));
        if (findings.Stop)
        {
            return findings.WithoutJob();
        }

        findings.AddRange(LimitsCheck.Window(job, lattice, dosing.Nominal.ClosingMillilitres));
        findings.AddRange(LimitsCheck.Features(job, shape.Shape, lattice.ShiftedLayers, dosing.Nominal.ClosingMillilitres, parallelism, cancellation));

        BedProperties bed = BedProperties.From(job.Mix, job.LooseDensity, job.BedTemperature);
        MoistureResult moisture = WettingSolver.Solve(WettingProblem.Of(dosing.Doses, cells, schedule, bed), parallelism, progress, cancellation);
        findings.AddRange(WaterCheck.Check(placement, lattice, moisture));

        progress?.Report(new Progress("inspection", 0.0));
        SolidSummary solid = SolidMeasure.Measure(target, moisture, job.Unit.Require.WaterCement);
        Estimate estimate = Estimator.Estimate(job, lattice, solid, dosing.Doses, timeline);
        RequirementReport requirements = RequirementCheck.Check(job, solid, estimate);
        findings.AddRange(requirements.Findings);

        CompiledJob compiled = new()
        {
            Description = job,
            Placement = placement,
            Lattice = lattice,
            Target = target,
            Doses = dosing.Doses,
            Timeline = timeline,
            Schedule = schedule,
            Moisture = moisture,
            Solid = solid,
            Estimate = estimate,
            Requirements = findings.Place(requirements.Results),
            Findings = findings.Items,
            Accepted = options.Accept,
            Inputs = read.Inputs,
            ToolVersion = options.ToolVersion,
        };
        JobVerifier.Verify(compiled);
        return new CompileResult(compiled, compiled.Findings);
    }
}
