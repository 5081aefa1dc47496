using System.Collections.Concurrent;
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
    /// <summary>The files of a job, each as soon as it is made: whoever goes through them writes the first while the last are still being drawn.</summary>
    /// <param name="job">The compiled job.</param>
    /// <param name="nameOfFile">Name of a description file as the files hold it: the same from any current folder.</param>
    /// <param name="rawField">Whether the raw moisture field is written too.</param>
    /// <param name="parallelism">Threads; no byte depends on them.</param>
    /// <param name="cancellation">Looked at between files.</param>
    /// <returns>The files in no certain order; the manifest is the last. To be gone through once.</returns>
    /// <exception cref="OperationCanceledException">Cancelled; thrown as they are gone through.</exception>
    public static IEnumerable<EmittedFile> AsMade(
        CompiledJob job, Func<string, string> nameOfFile, bool rawField, Parallelism parallelism, CancellationToken cancellation)
    {
        using CancellationTokenSource left = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        using BlockingCollection<EmittedFile> made = [];
        Task making = Task.Run(
            () =>
            {
                try
                {
                    Make(job, nameOfFile, rawField, made.Add, parallelism, left.Token);
                }
                finally
                {
                    made.CompleteAdding();
                }
            },
            CancellationToken.None);
        try
        {
            foreach (EmittedFile file in made.GetConsumingEnumerable(CancellationToken.None))
            {
                yield return file;
            }
        }
        finally
        {
            // Whoever stops half-way wants no more of them; nothing goes on making them behind his back.
            left.Cancel();
            ((IAsyncResult)making).AsyncWaitHandle.WaitOne();
        }

        making.GetAwaiter().GetResult();
    }

    /// <summary>The files of a job.</summary>
    /// <param name="job">The compiled job.</param>
    /// <param name="nameOfFile">Name of a description file as the files hold it: the same from any current folder.</param>
    /// <param name="rawField">Whether the raw moisture field is written too.</param>
    /// <param name="parallelism">Threads; no byte depends on them.</param>
    /// <param name="cancellation">Looked at between files.</param>
    /// <returns>The files by path; the manifest is the last.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static IReadOnlyList<EmittedFile> Of(
        CompiledJob job, Func<string, string> nameOfFile, bool rawField, Parallelism parallelism, CancellationToken cancellation)
    {
        ConcurrentQueue<EmittedFile> made = [];
        Make(job, nameOfFile, rawField, made.Enqueue, parallelism, cancellation);
        return [.. made.OrderBy(file => file.RelativePath == ManifestEmitter.Path).ThenBy(file => file.RelativePath, StringComparer.Ordinal)];
    }

    private static void Make(
        CompiledJob job, Func<string, string> nameOfFile, bool rawField, Action<EmittedFile> ready, Parallelism parallelism, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(job);
        EmissionSettings settings = Settings(job, nameOfFile, rawField, parallelism);
        HardenedSurface surface = HardenedSurface.Of(job.Moisture, job.Description.Mix.Wetting, parallelism);
        ConcurrentQueue<EmittedFile> files = [];
        JobData data = null!;
        IReadOnlyList<EmittedFile> pictures = [];
        ReportFields fields = null!;
        ParallelOptions options = new() { MaxDegreeOfParallelism = Math.Max(1, parallelism.Threads), CancellationToken = cancellation };
        // Each has stretches that one thread alone works at; side by side they fill each other's gaps. The big files come first: they are longest on their way.
        Parallel.Invoke(
            options,
            () => SurfaceSet.Emit(job, surface, parallelism, cancellation, Ready),
            () => pictures = PictureSet.OfUnit(job, surface, parallelism, cancellation, Ready),
            () => fields = ReportFields.Of(job, surface, parallelism),
            () =>
            {
                data = JobDataEmitter.Emit(job, settings, cancellation);
                foreach (EmittedFile file in data.Files)
                {
                    Ready(file);
                }
            });
        // One thread writes the page, which needs all of those; the plates keep the others busy.
        Parallel.Invoke(
            options,
            () => Ready(ReportEmitter.Emit(job, data, fields, settings, pictures)),
            () => PictureSet.Plates(job, surface, parallelism, cancellation, Ready));
        ready(ManifestEmitter.Emit(job, data, [.. files], nameOfFile));

        void Ready(EmittedFile file)
        {
            files.Enqueue(file);
            ready(file);
            // The manifest asks for all of these at the very end, when one thread is left.
            _ = file.Sha256;
        }
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
