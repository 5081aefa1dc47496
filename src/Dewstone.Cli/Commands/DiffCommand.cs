using System.CommandLine;
using System.Globalization;
using Dewstone.Cli.Rendering;
using Dewstone.Jobs.Comparison;
using Dewstone.Jobs.Compilation;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Folders;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Reading;

namespace Dewstone.Cli.Commands;

/// <summary><c>dewstone diff</c>: what a change does to the concrete.</summary>
internal static class DiffCommand
{
    public static Command Create(Surroundings world)
    {
        Argument<string> old = new("OLD") { Description = "Unit description or job folder, before." };
        Argument<string> now = new("NEW") { Description = "Unit description or job folder, now." };
        Option<string> format = new("--format") { Description = "text, or markdown for a review comment.", HelpName = "FORMAT", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "markdown");
        Option<string?> pictures = new("--pictures") { Description = "Folder that gets pictures of the heights that changed most.", HelpName = "DIR" };
        Option<double> volume = Amount("--tolerance-volume", "Litres of wanted or predicted solid that may differ.", "L");
        Option<double> dose = Amount("--tolerance-dose", "Millilitres by which a dose may differ.", "ML");
        Option<bool> results = new("--results-only") { Description = "Only results count as differences, not what the description says." };
        Option<int?> cells = WholeNumber.Option("--cells", "Cells a voxel side for units, 4 to 16 (default 8).", 4, 16);
        Option<string?> root = new("--root") { Description = "Folder that no named file may lie outside of.", HelpName = "DIR" };
        SharedOptions shared = new();
        Command command = new("diff", "Say what differs between two units or jobs, down to the predicted solid; exit 0 for same, 1 for different.")
        {
            old, now, format, pictures, volume, dose, results, cells, root,
        };
        shared.AddTo(command);
        command.SetAction(async (parse, cancellation) =>
        {
            Parallelism threads = shared.Threads(parse, world);
            bool quiet = parse.GetValue(shared.Quiet), json = parse.GetValue(shared.Json);
            Sides sides = new(parse.GetValue(cells) ?? JobOptions.DefaultCells, parse.GetValue(root), threads, world, quiet);
            ComparedJob? before = await sides.SideAsync(parse.GetRequiredValue(old), cancellation).ConfigureAwait(false);
            ComparedJob? after = await sides.SideAsync(parse.GetRequiredValue(now), cancellation).ConfigureAwait(false);
            if (before is null || after is null)
            {
                await sides.TellAsync().ConfigureAwait(false);
                return ExitCode.InputAtFault;
            }

            JobDifference difference = JobDifference.Between(before, after, new ComparisonTolerance
            {
                VolumeLitres = parse.GetValue(volume),
                DoseMillilitres = parse.GetValue(dose),
                ResultsOnly = parse.GetValue(results),
            });
            int code = difference.Differs ? ExitCode.No : ExitCode.Done;
            IReadOnlyList<EmittedFile> drawn = parse.GetValue(pictures) is null ? [] : DifferencePictures.Draw(difference);
            if (parse.GetValue(pictures) is { } folder && await WriteAsync(folder, drawn, world).ConfigureAwait(false) is int fault)
            {
                return fault;
            }

            await world.Output.WriteAsync(json ? DifferenceJson.Of(difference, code)
                : parse.GetValue(format) == "markdown" ? DifferenceMarkdown.Of(difference) : DifferenceText.Of(difference)).ConfigureAwait(false);
            return code;
        });
        return command;
    }

    private static Option<double> Amount(string name, string description, string unit) => new(name)
    {
        Description = description,
        HelpName = unit,
        CustomParser = result =>
        {
            string text = result.Tokens[^1].Value;
            if (double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value))
            {
                return value;
            }

            result.AddError($"{name} takes a number from 0, not '{text}'.");
            return 0.0;
        },
    };

    private static async Task<int?> WriteAsync(string folder, IReadOnlyList<EmittedFile> files, Surroundings world)
    {
        try
        {
            Directory.CreateDirectory(folder);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException)
        {
            await world.Error.WriteLineAsync(ProgramText.Of(ProgramFindings.Output, $"cannot write pictures to '{folder}': {fault.Message}")).ConfigureAwait(false);
            return ExitCode.CannotCreate;
        }

        foreach (EmittedFile file in files)
        {
            if (SingleFile.Write(Path.Combine(folder, file.RelativePath), file.Bytes) is { } fault)
            {
                await world.Error.WriteAsync(FindingText.Of(fault.Finding, colour: false)).ConfigureAwait(false);
                return ExitCode.Of(fault.Status, ExitCode.TryAgain);
            }
        }

        return null;
    }

    /// <summary>Reads or compiles what is to be compared.</summary>
    private sealed class Sides(int cells, string? root, Parallelism threads, Surroundings world, bool quiet)
    {
        private readonly List<Diagnostic> findings = [];
        private (JobDescription Description, ComparedJob Side)? compiled;

        public Task<ComparedJob?> SideAsync(string path, CancellationToken cancellation) =>
            ProgressDisplay.RunAsync(world, quiet, Path.GetFileName(Path.TrimEndingDirectorySeparator(path)), progress => Side(path, progress, cancellation));

        public async Task TellAsync()
        {
            foreach (Diagnostic finding in findings.Where(f => f.Severity == Severity.Error))
            {
                await world.Error.WriteAsync(FindingText.Of(finding, colour: false)).ConfigureAwait(false);
            }
        }

        private ComparedJob? Side(string path, IProgress<Progress> progress, CancellationToken cancellation)
        {
            if (Directory.Exists(path))
            {
                DiagnosticBag bag = new();
                ComparedJob? read = ComparedJobs.Read(path, threads, bag, cancellation);
                findings.AddRange(bag.Items);
                return read;
            }

            ReadResult description = DescriptionReader.ReadJob(path, new ReadOptions { Root = root });
            if (compiled is { } earlier && description.Job is { } again && ComparedJobs.AreSame(earlier.Description, again))
            {
                return earlier.Side with { Label = path };
            }

            CompileResult result = JobCompiler.Compile(
                description, new CompileOptions { CellsPerVoxel = cells, ToolVersion = ToolVersion.Text }, threads, progress, cancellation);
            findings.AddRange(result.Findings);
            if (result.Job is not { } job)
            {
                return null;
            }

            ComparedJob side = ComparedJobs.Of(job, path, threads);
            compiled = (job.Description, side);
            return side;
        }
    }
}
