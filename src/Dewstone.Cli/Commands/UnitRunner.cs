using Dewstone.Cli.Rendering;
using Dewstone.Jobs.Compilation;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Folders;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Reading;
using Dewstone.Reading.Job;

namespace Dewstone.Cli.Commands;

/// <summary>Compiles or checks units, several at a time, and says what came of each.</summary>
/// <param name="request">What was asked for.</param>
/// <param name="world">Where to write.</param>
internal sealed class UnitRunner(JobRequest request, Surroundings world)
{
    /// <summary>Folder that gets the job folders; null to write none.</summary>
    public string? OutputFolder { get; init; }

    /// <summary>Also write the raw moisture field.</summary>
    public bool WithField { get; init; }

    /// <summary>Stop before wetting.</summary>
    public bool DrawingOnly { get; init; }

    /// <summary>Runs all units; one that fails does not stop the rest.</summary>
    /// <param name="cancellation">Asks for an orderly end.</param>
    /// <returns>The exit code.</returns>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public async Task<int> RunAsync(CancellationToken cancellation)
    {
        RefuseTwins();
        List<UnitOutcome> outcomes = request.Units.Count == 1 ? [await OneAsync(request.Units[0], cancellation).ConfigureAwait(false)] : await AllAsync(cancellation).ConfigureAwait(false);
        if (!request.Json && outcomes.Count > 1)
        {
            await world.Output.WriteAsync("\n" + OutcomeText.Summary(outcomes)).ConfigureAwait(false);
        }

        int code = ExitCode.Combine([.. outcomes.Select(o => o.ExitCode)]);
        if (request.SarifFile is { } sarif)
        {
            code = ExitCode.Combine([code, await WriteSarifAsync(sarif, outcomes).ConfigureAwait(false)]);
        }

        if (request.Json)
        {
            string command = OutputFolder is null ? "check" : "compile";
            await world.Output.WriteAsync(OutcomeJson.Of(command, outcomes, code)).ConfigureAwait(false);
        }

        return code;
    }

    private async Task<UnitOutcome> OneAsync(string file, CancellationToken cancellation)
    {
        UnitOutcome outcome = await ProgressDisplay.RunAsync(
            world, request.Quiet, Path.GetFileName(file), progress => Run(file, request.Parallelism, progress, cancellation)).ConfigureAwait(false);
        await TellAsync(outcome, first: true).ConfigureAwait(false);
        return outcome;
    }

    // Several units at a time, each on its share of the threads; told in the order asked for, as soon as each and all before it are done.
    private async Task<List<UnitOutcome>> AllAsync(CancellationToken cancellation)
    {
        int atOnce = Math.Min(request.Units.Count, request.Parallelism.Threads);
        Parallelism share = new(Math.Max(1, request.Parallelism.Threads / atOnce));
        UnitOutcome?[] done = new UnitOutcome?[request.Units.Count];
        int finished = 0;
        return await ProgressDisplay.RunAsync(world, request.Quiet, $"{done.Length} units", progress =>
        {
            int told = 0;
            Lock gate = new();
            Parallel.For(0, done.Length, new ParallelOptions { MaxDegreeOfParallelism = atOnce, CancellationToken = cancellation }, i =>
            {
                UnitOutcome outcome = Run(request.Units[i], share, new Progress<Progress>(), cancellation);
                lock (gate)
                {
                    done[i] = outcome;
                    finished++;
                    progress.Report(new Progress("units", (double)finished / done.Length, $"{finished} of {done.Length} done"));
                    while (told < done.Length && done[told] is { } next)
                    {
                        TellAsync(next, told == 0).GetAwaiter().GetResult();
                        told++;
                    }
                }
            });

            return done.Select(outcome => outcome!).ToList();
        }).ConfigureAwait(false);
    }

    private async Task TellAsync(UnitOutcome outcome, bool first)
    {
        if (!request.Json)
        {
            string text = OutcomeText.Of(outcome, world.Colour, request.Quiet);
            await world.Output.WriteAsync(first ? text : "\n" + text).ConfigureAwait(false);
        }
    }

    private UnitOutcome Run(string file, Parallelism threads, IProgress<Progress> progress, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        if (OutputFolder is { } folder && JobFolderWriter.Examine(folder, JobFolder.NameOf(file)) is { } obstacle)
        {
            return new UnitOutcome { File = file, Name = Path.GetFileName(file), Findings = [obstacle], ExitCode = ExitCode.CannotCreate };
        }

        ReadResult read = DescriptionReader.ReadJob(file, new ReadOptions
        {
            Mix = request.Mix,
            Printer = request.Printer,
            Site = request.Sites is [var first, ..] ? first : null,
            Needles = request.Needles,
            Tonight = request.Tonight,
            Root = request.Root,
        });
        DiagnosticBag unread = new();
        EarlierJob? like = request.Like is { } earlier ? ReadEarlier(earlier, unread) : null;
        List<Site> elsewhere = [];
        foreach (FileReading<Site> other in request.Sites.Skip(1).Select(DescriptionReader.ReadSite))
        {
            unread.AddRange(other.Diagnostics);
            elsewhere.AddRange(other.Value is { } sound ? [sound] : []);
        }

        if (unread.HasErrors)
        {
            return new UnitOutcome { File = file, Name = Path.GetFileName(file), Findings = unread.Items, ExitCode = ExitCode.InputAtFault };
        }

        using FilesInMaking files = new(threads, cancellation);
        CompileOptions options = new()
        {
            CellsPerVoxel = request.Cells,
            Correct = request.Correct,
            Like = like,
            DrawingOnly = DrawingOnly,
            Trials = request.Trials,
            Accept = request.Accept,
            Predicted = OutputFolder is null ? null : files.Begin,
            ToolVersion = ToolVersion.Text,
        };
        CompileResult compiled = JobCompiler.Compile(read, options, threads, progress, cancellation);
        UnitOutcome outcome = new()
        {
            File = file,
            Name = read.Job?.Unit.Name ?? Path.GetFileName(file),
            Findings = [.. unread.Items, .. compiled.Findings],
            Job = compiled.Job,
            Elsewhere = compiled.Job is { } made ? [.. elsewhere.Select(other => SiteComparison.Stand(made, other, threads))] : [],
            ExitCode = compiled.InputAtFault ? ExitCode.InputAtFault : compiled.Job is { Held: true } ? ExitCode.No : ExitCode.Done,
        };
        return OutputFolder is null || compiled.Job is null ? outcome : Write(outcome, compiled.Job, files.AsMade(compiled.Job, read.Sources.BelowRoot, WithField), progress, cancellation);
    }

    private static EarlierJob? ReadEarlier(string folder, DiagnosticBag findings)
    {
        findings.AddRange(JobFolderRecovery.PutBack(folder));
        return EarlierJobReader.Read(folder, findings);
    }

    private UnitOutcome Write(
        UnitOutcome outcome, CompiledJob job, IEnumerable<EmittedFile> files, IProgress<Progress> progress, CancellationToken cancellation)
    {
        progress.Report(new Progress("files", 1.0));
        JobFolderOutcome written = JobFolderWriter.Write(
            new JobFolderOrder
            {
                OutputFolder = OutputFolder!,
                Name = JobFolder.NameOf(outcome.File),
                Held = job.Held,
                Files = files,
            },
            cancellation);
        return outcome with
        {
            Findings = [.. outcome.Findings, .. written.Findings],
            Folder = written.Status == JobFolderStatus.Written ? written.Path : null,
            ExitCode = ExitCode.Of(written.Status, outcome.ExitCode),
        };
    }

    private async Task<int> WriteSarifAsync(string path, IReadOnlyList<UnitOutcome> outcomes)
    {
        ReadOnlyMemory<byte> bytes = FindingsEmitter.Emit([.. outcomes.SelectMany(o => o.Findings)], ToolVersion.Text, file => file).Bytes;
        if (SingleFile.Write(path, bytes) is not { } fault)
        {
            return ExitCode.Done;
        }

        await world.Error.WriteAsync(FindingText.Of(fault.Finding, colour: false)).ConfigureAwait(false);
        return ExitCode.Of(fault.Status, ExitCode.TryAgain);
    }

    // Two units of one file name would take turns in one job folder, and the first would be lost without a word.
    private void RefuseTwins()
    {
        if (OutputFolder is null)
        {
            return;
        }

        IGrouping<string, string>? twins = request.Units.GroupBy(JobFolder.NameOf, StringComparer.OrdinalIgnoreCase).FirstOrDefault(g => g.Count() > 1);
        if (twins is not null)
        {
            throw new UsageException($"{string.Join(" and ", twins)} would both be written to {twins.Key}.job; compile them into different folders.");
        }
    }
}
