using Dewstone.Compute.Numerics;
using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Jobs.Emission.Pictures.Plates;
using Dewstone.Jobs.Emission.Pictures.Views;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Pictures;

/// <summary>
/// The pictures of a job folder: a plate for each layer, the unit growing, the unit outside, cut open, and its voids as the body, and where trials differ. But for the last, all show
/// the predicted solid, as the water made it; nothing in them depends on the number of threads.
/// </summary>
internal static class PictureSet
{
    /// <summary>Path of the unit seen from outside.</summary>
    public const string Unit = "unit.png";

    /// <summary>Path of a layer's plate.</summary>
    /// <param name="layer">Layer, from 0.</param>
    /// <returns>Path in the job folder.</returns>
    public static string Plate(int layer) => $"layers/layer-{layer + 1:000}.png";

    /// <summary>Draws the pictures that show the whole unit.</summary>
    /// <param name="job">The compiled job.</param>
    /// <param name="surface">Its predicted solid.</param>
    /// <param name="parallelism">Threads to use; no picture depends on them.</param>
    /// <param name="cancellation">Looked at before each picture.</param>
    /// <param name="ready">Told each file as soon as it is drawn, from any thread; may be null.</param>
    /// <returns>The files, in a fixed order: growing picture, outside, cut open, voids.</returns>
    public static IReadOnlyList<EmittedFile> OfUnit(PredictedJob job, HardenedSurface surface, Parallelism parallelism, CancellationToken cancellation, Action<EmittedFile>? ready = null)
    {
        Body solid = new(SmoothedLevel.Of(surface, parallelism), surface.Grid, parallelism);
        ViewEmitter views = new(job, surface, solid, parallelism, cancellation);
        Canvas[] growing = new GrowingPicture(job, solid).Draw(parallelism, cancellation);
        Canvas outside = views.Outside(), cutOpen = views.CutOpen(), voids = views.Voids();
        return Made(
            [
                () => new EmittedFile("layers.gif", GifFile.Write(growing, GrowingPicture.Palette)),
                () => new EmittedFile(Unit, PngFile.Write(outside)),
                () => new EmittedFile("cutaway.png", PngFile.Write(cutOpen)),
                () => new EmittedFile("voids.png", PngFile.Write(voids)),
            ],
            parallelism, ready, cancellation);
    }

    /// <summary>Draws where the trials differ.</summary>
    /// <param name="job">The compiled job.</param>
    /// <returns>The file; none without trials.</returns>
    public static IReadOnlyList<EmittedFile> Doubt(CompiledJob job) =>
        job.Trials is { } trials ? [new EmittedFile(DoubtPicture.Path, PngFile.Write(DoubtPicture.Draw(job, trials)))] : [];

    /// <summary>Draws the plates.</summary>
    /// <param name="job">The compiled job.</param>
    /// <param name="surface">Its predicted solid.</param>
    /// <param name="parallelism">Threads to use; no picture depends on them.</param>
    /// <param name="cancellation">Looked at before each picture.</param>
    /// <param name="ready">Told each file as soon as it is drawn, from any thread; may be null.</param>
    /// <returns>The files, from the lowest layer.</returns>
    public static IReadOnlyList<EmittedFile> Plates(PredictedJob job, HardenedSurface surface, Parallelism parallelism, CancellationToken cancellation, Action<EmittedFile>? ready = null)
    {
        PlateSubject subject = new(job, surface);
        return Made(
            [.. Enumerable.Range(0, job.Lattice.Layers).Select<int, Func<EmittedFile>>(layer => () => new EmittedFile(Plate(layer), PngFile.Write(PlateEmitter.Draw(subject, layer))))],
            parallelism, ready, cancellation);
    }

    // The long ones come first, so that no thread is left alone with one at the end.
    private static EmittedFile[] Made(Func<EmittedFile>[] tasks, Parallelism parallelism, Action<EmittedFile>? ready, CancellationToken cancellation)
    {
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
