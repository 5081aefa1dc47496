using Dewstone.Compute.Numerics;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Pictures;
using Dewstone.Jobs.Emission.Pictures.Plates;
using Dewstone.Jobs.Emission.Report;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Bins;

/// <summary>All files of a bin's job folder: those of a job that a bin has a use for, the list of its units and their labels.</summary>
public static class BinFiles
{
    /// <summary>The files of a bin job.</summary>
    /// <param name="bin">A bin that was compiled to a job.</param>
    /// <param name="nameOfFile">Name of a description file as the files hold it: the same from any current folder.</param>
    /// <param name="parallelism">Threads; no byte depends on them.</param>
    /// <param name="cancellation">Looked at between files.</param>
    /// <returns>The files; the manifest is the last.</returns>
    /// <exception cref="ArgumentException">A bin without a job.</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static IReadOnlyList<EmittedFile> Of(BinResult bin, Func<string, string> nameOfFile, Parallelism parallelism, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(bin);
        CompiledJob job = bin.Job ?? throw new ArgumentException("The bin has no job.", nameof(bin));
        EmissionSettings settings = JobFiles.Settings(job, nameOfFile, rawField: false, parallelism);
        HardenedSurface surface = HardenedSurface.Of(job.Moisture, job.Description.Mix.Wetting, parallelism);
        JobData data = null!;
        PlateField plates = null!;
        EmittedFile[] pictures = [];
        Parallel.Invoke(
            new ParallelOptions { MaxDegreeOfParallelism = Math.Max(1, parallelism.Threads), CancellationToken = cancellation },
            () => pictures = Plates(job, surface, parallelism, cancellation),
            () => plates = PlateField.Of(job, surface, parallelism),
            () => data = JobDataEmitter.Emit(job, settings, cancellation));
        ReportSubject subject = new() { Job = job, Data = data, Settings = settings, Plates = plates };
        List<EmittedFile> files = [.. data.Files, .. pictures, BinTable.Emit(bin), BinLabels.Emit(bin, data), BinReport.Emit(bin, subject)];
        files.Add(ManifestEmitter.Emit(job, data, files, nameOfFile));
        return files;
    }

    private static EmittedFile[] Plates(CompiledJob job, HardenedSurface surface, Parallelism parallelism, CancellationToken cancellation)
    {
        PlateSubject subject = new(job, surface);
        EmittedFile[] files = new EmittedFile[job.Lattice.Layers];
        ParallelOptions options = new() { MaxDegreeOfParallelism = Math.Max(1, parallelism.Threads), CancellationToken = cancellation };
        Parallel.For(0, files.Length, options, layer =>
            files[layer] = new EmittedFile(PictureSet.Plate(layer), PngFile.Write(PlateEmitter.Draw(subject, layer))));
        return files;
    }
}
