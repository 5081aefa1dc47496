using System.Collections.Concurrent;
using Dewstone.Jobs.Emission.Pictures;
using Dewstone.Jobs.Emission.Report;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission;

/// <summary>
/// The files of one job folder while they are being made. What needs only the predicted solid can be begun while that is still being judged, in the
/// gaps its checks leave; whoever goes through the files writes the first while the last are being drawn.
/// </summary>
public sealed class FilesInMaking : IDisposable
{
    private readonly BlockingCollection<EmittedFile> made = [];
    private readonly ConcurrentQueue<EmittedFile> files = [];
    private readonly CancellationTokenSource left;
    private readonly Parallelism parallelism;
    private PredictedParts? parts;
    private Task ahead = Task.CompletedTask, rest = Task.CompletedTask;

    /// <summary>The files of a job; none is made yet.</summary>
    /// <param name="parallelism">Threads; no byte depends on them.</param>
    /// <param name="cancellation">Looked at between files.</param>
    public FilesInMaking(Parallelism parallelism, CancellationToken cancellation)
    {
        this.parallelism = parallelism;
        left = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
    }

    /// <summary>Begins with what needs only the predicted solid; returns at once.</summary>
    /// <param name="job">The job, not yet judged.</param>
    public void Begin(PredictedJob job)
    {
        parts = PartsOf(job);
        ahead = Task.Factory.StartNew(parts.MakeAll, left.Token, TaskCreationOptions.LongRunning, TaskScheduler.Default);
    }

    /// <summary>All files, each as soon as it is made. To be gone through once.</summary>
    /// <param name="job">The job; the same one, judged, where it was begun with before.</param>
    /// <param name="nameOfFile">Name of a description file as the files hold it: the same from any current folder.</param>
    /// <param name="rawField">Whether the raw moisture field is written too.</param>
    /// <returns>The files in no certain order; the manifest is the last.</returns>
    /// <exception cref="OperationCanceledException">Cancelled; thrown as they are gone through.</exception>
    public IEnumerable<EmittedFile> AsMade(CompiledJob job, Func<string, string> nameOfFile, bool rawField)
    {
        ArgumentNullException.ThrowIfNull(job);
        rest = Task.Run(
            () =>
            {
                try
                {
                    Make(job, parts ?? PartsOf(job), JobFiles.Settings(job, nameOfFile, rawField, parallelism));
                }
                finally
                {
                    made.CompleteAdding();
                }
            },
            CancellationToken.None);
        foreach (EmittedFile file in made.GetConsumingEnumerable(CancellationToken.None))
        {
            yield return file;
        }

        rest.GetAwaiter().GetResult();
    }

    /// <summary>Ends what is being made: whoever stops half-way wants no more of it, and nothing goes on behind his back.</summary>
    public void Dispose()
    {
        left.Cancel();
        ((IAsyncResult)ahead).AsyncWaitHandle.WaitOne();
        ((IAsyncResult)rest).AsyncWaitHandle.WaitOne();
        left.Dispose();
        made.Dispose();
    }

    private PredictedParts PartsOf(PredictedJob job) => new(job, parallelism, Ready, left.Token);

    private void Make(CompiledJob job, PredictedParts parts, EmissionSettings settings)
    {
        JobData data = null!;
        IReadOnlyList<EmittedFile> doubt = [];
        ParallelOptions options = new() { MaxDegreeOfParallelism = Math.Max(1, parallelism.Threads), CancellationToken = left.Token };
        // Each has stretches that one thread alone works at; side by side they fill each other's gaps. The big files come first: they are longest on their way.
        Parallel.Invoke(
            options,
            () => _ = parts.Surfaces,
            () => _ = parts.Pictures,
            () => _ = parts.Fields,
            () =>
            {
                data = JobDataEmitter.Emit(job, settings, parts.Moisture, left.Token);
                doubt = PictureSet.Doubt(job);
                foreach (EmittedFile file in data.Files.Concat(doubt))
                {
                    Ready(file);
                }
            });
        // One thread writes the page, which needs all of those; the plates keep the others busy.
        Parallel.Invoke(
            options,
            () => Ready(ReportEmitter.Emit(job, data, parts.Fields, settings, [.. parts.Pictures, .. doubt])),
            () => _ = parts.Plates);
        made.Add(ManifestEmitter.Emit(job, data, [.. files], settings.NameOfFile));
    }

    private void Ready(EmittedFile file)
    {
        files.Enqueue(file);
        made.Add(file);
        // The manifest asks for all of these at the very end, when one thread is left.
        _ = file.Sha256;
    }
}
