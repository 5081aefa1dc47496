using Dewstone.Compute.Numerics;
using Dewstone.Compute.Sequencing;
using Dewstone.Compute.Wetting;
using Dewstone.Jobs.Emission.Pictures;
using Dewstone.Jobs.Emission.Report;
using Dewstone.Jobs.Emission.Surfaces;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission;

/// <summary>All files of a job folder: data, pictures, surfaces, report, and the manifest that lists them.</summary>
public static class JobFiles
{
    /// <summary>The files of a job.</summary>
    /// <param name="job">The compiled job.</param>
    /// <param name="nameOfFile">Name of a description file as the files hold it: the same from any current folder.</param>
    /// <param name="rawField">Whether the raw moisture field is written too.</param>
    /// <param name="parallelism">Threads; no byte depends on them.</param>
    /// <param name="cancellation">Looked at between files.</param>
    /// <returns>The files; the manifest is the last.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static IReadOnlyList<EmittedFile> Of(
        CompiledJob job, Func<string, string> nameOfFile, bool rawField, Parallelism parallelism, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(job);
        EmissionSettings settings = Settings(job, nameOfFile, rawField, parallelism);
        HardenedSurface surface = HardenedSurface.Of(job.Moisture, job.Description.Mix.Wetting, parallelism);
        JobData data = null!;
        IReadOnlyList<EmittedFile> pictures = [], surfaces = [];
        ReportFields fields = null!;
        // Each has stretches that one thread alone works at; side by side they fill each other's gaps.
        Parallel.Invoke(
            new ParallelOptions { MaxDegreeOfParallelism = Math.Max(1, parallelism.Threads), CancellationToken = cancellation },
            () => pictures = PictureSet.Emit(job, surface, parallelism, cancellation),
            () => surfaces = SurfaceSet.Emit(job, surface, parallelism, cancellation),
            () => fields = ReportFields.Of(job, surface, parallelism),
            () => data = JobDataEmitter.Emit(job, settings, cancellation));
        List<EmittedFile> files = [.. data.Files, .. pictures, .. surfaces];
        files.Add(ReportEmitter.Emit(job, data, fields, settings, pictures));
        files.Add(ManifestEmitter.Emit(job, data, files, nameOfFile));
        return files;
    }

    /// <summary>What the emitters need beside the job.</summary>
    internal static EmissionSettings Settings(CompiledJob job, Func<string, string> nameOfFile, bool rawField, Parallelism parallelism)
    {
        Stations stations = Stations.Over(job.Description.Printer);
        BedProperties bed = BedProperties.From(job.Description.Mix, job.Description.LooseDensity, job.Description.BedTemperature);
        return new EmissionSettings
        {
            Addressing = (i, j, _) =>
            {
                StationSeat seat = stations.Seat(job.Lattice, i, j);
                return new NeedleAddress(seat.Station, seat.Column, seat.Row);
            },
            Wetting = new WettingConstants
            {
                WindowSeconds = bed.WindowSeconds,
                ShotsPerDose = WettingSolver.ShotsPerStation,
                StepShare = WettingSolver.StepShare,
                StepsPerSetting = WettingSolver.StepsPerChoice,
                LastStepStretch = WettingSolver.LastStepStretch,
            },
            NameOfFile = nameOfFile,
            RawField = rawField,
            Parallelism = parallelism,
        };
    }
}
