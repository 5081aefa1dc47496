using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Jobs.Emission.Pictures.Plates;
using Dewstone.Jobs.Emission.Pictures.Views;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Pictures;

/// <summary>
/// The pictures of a job folder: a plate for each layer, the unit growing, the unit outside, cut open, and its voids as the body. All show
/// the predicted solid, as the water made it; nothing in them depends on the number of threads.
/// </summary>
public static class PictureSet
{
    /// <summary>Draws all pictures of a job.</summary>
    /// <param name="job">The compiled job.</param>
    /// <param name="parallelism">Threads to use; no picture depends on them.</param>
    /// <param name="cancellation">Looked at before each picture.</param>
    /// <returns>The files, in a fixed order: plates from the lowest layer, growing picture, outside, cut open, voids.</returns>
    public static IReadOnlyList<EmittedFile> Emit(CompiledJob job, Parallelism parallelism, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(job);
        HardeningSurface surface = HardeningSurface.Of(job.Moisture, job.Description.Mix.Wetting, parallelism);
        PlateSubject subject = new(job, surface);
        Body solid = new(surface.Level, surface.Grid, parallelism);
        ViewEmitter views = new(job, surface, solid, parallelism, cancellation);
        (string Name, Canvas Sheet)[] seen = [("unit.png", views.Outside()), ("cutaway.png", views.CutOpen()), ("voids.png", views.Voids())];
        int layers = job.Lattice.Layers;
        EmittedFile[] files = new EmittedFile[layers + seen.Length];
        ParallelOptions options = new() { MaxDegreeOfParallelism = parallelism.Threads, CancellationToken = cancellation };
        Parallel.For(0, files.Length, options, layer =>
        {
            (string name, Canvas sheet) = layer < layers
                ? ($"layers/layer-{layer + 1:000}.png", PlateEmitter.Draw(subject, layer))
                : seen[layer - layers];
            files[layer] = new EmittedFile(name, PictureEncoder.ToPng(sheet));
        });
        return files;
    }
}
