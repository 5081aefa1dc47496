using Dewstone.Compute.Geometry;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Surfaces;

/// <summary>
/// The surfaces of a job folder: the hardened solid with its deviation (<c>predicted.glb</c>), and hardened and wanted solid as plain meshes
/// (<c>predicted.stl</c>, <c>target.stl</c>). Unit frame; closed, oriented outward; walls of dry pockets belong to the hardened surface.
/// </summary>
internal static class SurfaceSet
{
    /// <summary>Path of the hardened surface with its deviation.</summary>
    public const string PredictedGlb = "predicted.glb";

    /// <summary>Path of the hardened surface.</summary>
    public const string PredictedStl = "predicted.stl";

    /// <summary>Path of the wanted surface.</summary>
    public const string TargetStl = "target.stl";

    /// <summary>Writes the surfaces of a job.</summary>
    /// <param name="job">The compiled job.</param>
    /// <param name="surface">Its predicted solid.</param>
    /// <param name="parallelism">Threads; no byte depends on them.</param>
    /// <param name="cancellation">Looked at between surfaces.</param>
    /// <param name="ready">Told each file as soon as it is made, from any thread; may be null.</param>
    /// <returns>The files, in a fixed order.</returns>
    public static IReadOnlyList<EmittedFile> Emit(
        PredictedJob job, HardenedSurface surface, Parallelism parallelism, CancellationToken cancellation, Action<EmittedFile>? ready = null)
    {
        ReefShape shape = ReefShapeBuilder.Build(job.Description.Unit).Shape;
        PredictedSurface predicted = PredictedSurface.Of(surface.Mesh, job, shape, parallelism);
        cancellation.ThrowIfCancellationRequested();

        // The GLB is written by one thread; the others meanwhile find the wanted surface.
        Func<EmittedFile>[] tasks =
        [
            () => new EmittedFile(PredictedGlb, GlbFile.Write(predicted, $"dewstone {job.ToolVersion}")),
            () => new EmittedFile(PredictedStl, StlFile.Write(predicted.Surface, "dewstone predicted surface, unit frame, millimetres", parallelism)),
            () => new EmittedFile(
                TargetStl, StlFile.Write(WantedSurface.Of(job, shape, parallelism), "dewstone wanted surface, unit frame, millimetres", parallelism)),
        ];
        EmittedFile[] files = new EmittedFile[tasks.Length];
        ParallelOptions options = new() { MaxDegreeOfParallelism = parallelism.Threads, CancellationToken = cancellation };
        Parallel.For(0, tasks.Length, options, task =>
        {
            files[task] = tasks[task]();
            ready?.Invoke(files[task]);
        });
        return files;
    }
}
