using System.Globalization;
using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Sequencing;
using Dewstone.Jobs.Compilation;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;
using Dewstone.Reading;
using Dewstone.Reading.Job;

namespace Dewstone.Jobs.Resuming;

/// <summary>
/// Answers whether to go on after a stop, and makes the job for the rest: delivered doses fixed, the pause in the wetting, the rest kept as tabled
/// where nothing changed or where it still serves, else found anew.
/// </summary>
public static class JobResumer
{
    /// <summary>Resumes a job.</summary>
    /// <param name="question">The job and its stop, which <see cref="StopCheck"/> has found possible.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="progress">Told within; may be null.</param>
    /// <param name="cancellation">Looked at between and within passes.</param>
    /// <returns>The answer.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    /// <exception cref="InvalidOperationException">An invariant between passes is broken: a fault of the program.</exception>
    public static ResumeResult Resume(ResumeQuestion question, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(question);
        JobCore core = question.Job.Core;
        JobDescription inOneGo = core.Description, job = Stopped(question);
        DosePlan planned = question.Job.Doses;
        DiagnosticBag logged = new();
        DosePlan delivered = DeliveredDoses.Of(job, planned, question.RunLog, question.RunLogFile, logged);
        FindingList findings = new(new SourceMaps(), [.. question.Accept, .. question.Manifest.Accepted]);
        findings.AddRange(logged.Items);
        if (findings.Stop)
        {
            return new ResumeResult { Findings = findings.Items };
        }

        ReefShape shape = ReefShapeBuilder.Build(job.Unit).Shape;
        TargetField target = Voxelizer.Voxelize(shape, core.Placement, core.Cells, parallelism, progress, cancellation);
        DoseSchedule before = TimelineBuilder.Build(inOneGo, core.Lattice, planned).Schedule;
        bool isSame = question.PauseMilliseconds == 0 && SameNeedles(job.Needles, inOneGo.Needles) && delivered.CentiMillilitres.AsSpan().SequenceEqual(planned.CentiMillilitres);
        RestResult? rest = null;
        if (!isSame)
        {
            rest = RestSolver.Solve(job, shape, core.Placement, planned, delivered, new DoseSolverOptions(), parallelism, progress, cancellation);
        }

        DosePlan doses = rest?.Doses ?? planned;
        Prediction first = Prediction.Of(inOneGo, planned, target, parallelism, progress, cancellation);
        Prediction now = isSame ? first with { Timeline = TimelineBuilder.Build(job, core.Lattice, doses).Timeline } : Prediction.Of(job, doses, target, parallelism, progress, cancellation);
        progress?.Report(new Progress("inspection", 0.0));
        StopTimes times = new(job, doses, now.Schedule, before, core.WindowSeconds);
        findings.AddRange([Resumed(job.Stop!), .. rest is { Redosed: true } ? [Redosed(rest)] : Array.Empty<Diagnostic>(), .. times.Findings()]);
        findings.AddRange(SupplyCheck.Check(job, core.Lattice, doses, now.Timeline));
        JudgedSolid judged = JudgedSolid.Of(job, shape, core.Placement, core.Lattice, target, now, parallelism, cancellation);
        findings.AddRange(judged.Findings);
        findings.AddRange(Lost(question.Manifest, judged.Requirements));

        CompiledJob compiled = new()
        {
            Description = job,
            Registration = new Registration { Wish = job.Unit.Place, Fixed = true },
            Placement = core.Placement,
            Lattice = core.Lattice,
            Target = target,
            Doses = doses,
            Dosing = Dosing(job.Stop!, planned, doses, first, now, rest),
            Timeline = now.Timeline,
            Schedule = now.Schedule,
            Moisture = now.Moisture,
            Solid = now.Solid,
            Estimate = now.Estimate,
            Inspection = judged.Inspection,
            Strength = judged.Strength,
            Sea = judged.Sea,
            Habitat = judged.Habitat,
            Requirements = findings.Place(judged.Requirements),
            Findings = findings.Items,
            Accepted = [.. question.Accept, .. question.Manifest.Accepted],
            Inputs = [.. question.Manifest.Inputs, .. question.Inputs],
            ToolVersion = question.ToolVersion,
        };
        JobVerifier.Verify(compiled);
        return new ResumeResult { Job = compiled, Joint = Joint(times, target, first, now, core), Rest = rest, Findings = compiled.Findings };
    }

    private static JobDescription Stopped(ResumeQuestion question)
    {
        JobDescription job = question.Job.Core.Description;
        return job with
        {
            Needles = question.Needles ?? job.Needles,
            Stop = new PrintStop
            {
                JobFingerprint = Fingerprint.Of(question.Job.CoreBytes.Span).ToString(),
                AfterLayer = question.AfterLayer,
                Station = question.Station,
                PauseMilliseconds = question.PauseMilliseconds,
                NeedlesBefore = job.Needles,
            },
        };
    }

    private static bool SameNeedles(NeedleTable? a, NeedleTable? b) =>
        CanonicalJson.Compact(json => PrinterJson.Write(json, "needles", a)).AsSpan().SequenceEqual(CanonicalJson.Compact(json => PrinterJson.Write(json, "needles", b)));

    private static Diagnostic Resumed(PrintStop stop) => JointFindings.Resumed.At(
        $"the tables and the sequence hold the rest of job {stop.JobFingerprint} after layer {stop.AfterLayer}{(stop.Station > 0 ? $", station {stop.Station} of the next" : "")}",
        "put it on the machine that stopped, over the same bin");

    private static Diagnostic Redosed(RestResult rest) => JointFindings.Redosed.At(
        string.Create(
            CultureInfo.InvariantCulture,
            $"misfit at {rest.Cells} cells a voxel: {rest.InOneGoLitres:0.0#} L in one go, {rest.AsTabledLitres:0.0#} L with the stop and the doses as tabled, {rest.ChosenLitres:0.0#} L as found anew"),
        "nothing to do");

    private static IEnumerable<Diagnostic> Lost(Manifest manifest, IReadOnlyList<RequirementResult> results) =>
        results.Where(now => !now.Met && manifest.Requirements.Any(was => was.Met && was.Id == now.Id && was.Feature == now.Feature)).Select(now => JointFindings.RequirementLost.At(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{now.Quantity}{(now.Feature.Length == 0 ? "" : $" of {now.Feature}")} is {now.Value:0.####} where {now.Op} {now.Limit:0.####} is required; it was met before the stop"),
            "scrap the bin, or have it judged and release the finding", now.Key));

    // What stands beside the doses chosen is the job in one go, not plain doses.
    private static DosingSummary Dosing(PrintStop stop, DosePlan planned, DosePlan doses, Prediction first, Prediction now, RestResult? rest) => new()
    {
        Corrected = rest is { Redosed: true },
        Resumed = true,
        PlainMillilitres = 0.0,
        Plain = DoseFigures.Of(planned, first.Solid),
        Chosen = DoseFigures.Of(doses, now.Solid),
        Solves = rest?.Solves ?? 0,
        MisfitCells = rest?.Cells ?? 0,
        PlainMisfitLitres = rest?.InOneGoLitres ?? 0.0,
        MisfitLitres = rest?.ChosenLitres ?? 0.0,
        LikeFingerprint = stop.JobFingerprint,
    };

    private static JointReport Joint(StopTimes times, TargetField target, Prediction first, Prediction now, JobCore core)
    {
        (int lower, int upper) = times.Joint();
        int top = Math.Min(core.Lattice.Layers, Math.Max(upper, lower + 1));
        return new JointReport
        {
            LowerLayer = lower,
            UpperLayer = upper,
            AgeSeconds = times.AgeSeconds(),
            WindowSeconds = core.WindowSeconds,
            UnsetInOneGoCubicMetres = Unset(target, first.Moisture, lower, top),
            UnsetCubicMetres = Unset(target, now.Moisture, lower, top),
            ShapeMatchInOneGo = first.Solid.ShapeMatch,
            ShapeMatch = now.Solid.ShapeMatch,
        };
    }

    private static double Unset(TargetField target, MoistureResult moisture, int lower, int upper)
    {
        CellGrid grid = target.Grid;
        int perLayer = grid.Nx * grid.Ny * grid.CellsPerLayer;
        double cells = 0.0;
        for (int i = (lower - 1) * perLayer; i < upper * perLayer; i++)
        {
            cells += moisture.Hardened[i] == 0 ? target.Fraction[i] : 0.0;
        }

        return cells * grid.CellCubicMetres;
    }
}
