using Dewstone.Compute.Dosing;
using Dewstone.Jobs.Compilation;
using Dewstone.Jobs.Emission;
using Dewstone.Model.Description;
using Dewstone.Model.Results;
using Dewstone.Reading;

namespace Dewstone.Jobs.Bins;

/// <summary>Solves a unit once, alone and for the ideal head of its printer, so that it can be stood in any bin later.</summary>
public static class UnitSolver
{
    /// <summary>Solves a unit.</summary>
    /// <param name="read">The description as read: unit with the seeds of its draw, mix, the real printer, site and night.</param>
    /// <param name="wish">Where it stands, no member free: the same for all units of its line.</param>
    /// <param name="covered">Whether something in its bin stands higher, so that loose mix is spread over its top.</param>
    /// <param name="options">Cells, correction, released findings, version of the tool; its own wish and least layers are not looked at.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="progress">Told within; may be null.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>The unit, or the findings that forbade it.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static UnitResult Solve(
        ReadResult read, PlacementWish wish, bool covered, CompileOptions options, Parallelism parallelism, IProgress<Progress>? progress,
        CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(read);
        ArgumentNullException.ThrowIfNull(wish);
        ArgumentNullException.ThrowIfNull(options);
        if (read.Job is not { } asked)
        {
            return new UnitResult(null, read.Diagnostics);
        }

        JobDescription ideal = asked with { Printer = IdealHead.Of(asked.Printer), Needles = null };
        int layers = covered ? (Placer.Place(ideal, LeastCells, wish).Lattice?.Layers ?? 0) + 1 : 0;
        CompileResult compiled = JobCompiler.Compile(
            read with { Job = ideal }, options with { Wish = wish, LeastLayers = layers }, parallelism, progress, cancellation);
        return new UnitResult(compiled.Job is { } job ? Of(job, covered) : null, compiled.Findings);
    }

    private const int LeastCells = 2;

    private static SolvedUnit Of(CompiledJob job, bool covered) => new()
    {
        Unit = job.Description.Unit,
        Placement = job.Placement,
        Lattice = job.Lattice,
        Cells = job.Moisture.Grid,
        CentiMillilitres = job.Doses.CentiMillilitres,
        Hardened = CellBits.Of(job.Moisture.Hardened),
        Covered = covered,
        Solid = job.Solid,
        Estimate = job.Estimate,
        DigOutDays = job.Strength?.DigOutDays,
        LiftDays = job.Strength?.LiftDays,
        MeanPascals = job.Strength?.MeanPascals,
        Requirements = job.Requirements,
        Findings = job.Findings,
        Design = JobCoreEmitter.DesignOf(job.Description.Unit),
    };
}
