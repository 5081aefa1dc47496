using System.CommandLine;
using Dewstone.Cli.Rendering;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Folders;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Orders.Batches;
using Dewstone.Orders.Plans;
using Dewstone.Reading;

namespace Dewstone.Cli.Commands;

/// <summary><c>dewstone order plan</c>: which units in which bin on which night.</summary>
internal static class OrderPlanCommand
{
    public static Command Create(Surroundings world)
    {
        Argument<string> order = OrderCompileCommand.OrderArgument();
        Option<string> output = OrderCompileCommand.OutputOption();
        Option<string?> root = JobOptions.Root();
        SharedOptions shared = new();
        Command command = new("plan", "Plan an order: which units in which bin, printed, set and dug out when, with how much mix.") { order, output, root };
        shared.AddTo(command);
        command.SetAction(async (parse, cancellation) =>
        {
            string file = parse.GetRequiredValue(order);
            UsageException.ThrowIfOption(file, parse);

            OrderFolder folder = OrderFolder.Of(parse.GetRequiredValue(output), file);
            Parallelism parallelism = shared.Threads(parse, world);
            bool isQuiet = parse.GetValue(shared.Quiet);
            OrderReading reading = DescriptionReader.ReadOrderFiles(file, parse.GetValue(root));
            PlanningResult result = await ProgressDisplay.RunAsync(
                world, isQuiet, Path.GetFileName(folder.Root), progress => OrderPlanner.Plan(reading, parallelism, progress, cancellation)).ConfigureAwait(false);
            List<Diagnostic> findings = [.. result.Findings];
            int code = result.InputAtFault ? ExitCode.InputAtFault : findings.Exists(finding => finding.Severity == Severity.Error) ? ExitCode.No : ExitCode.Done;
            if (result.Plan is not null && Write(folder, PlanFiles.Emit(reading, result)) is { } fault)
            {
                findings.Add(fault.Finding);
                code = ExitCode.Of(fault.Status, ExitCode.TryAgain);
            }

            string text = parse.GetValue(shared.Json) ? PlanReportJson.Of(result, findings, code) : PlanText.Of(result, folder.Root, findings, world.Colour, isQuiet);
            await world.Output.WriteAsync(text).ConfigureAwait(false);
            return code;
        });
        return command;
    }

    // The plan itself is written last; drawings of bins that are no longer planned are taken away.
    private static (JobFolderStatus Status, Diagnostic Finding)? Write(OrderFolder folder, IReadOnlyList<EmittedFile> files)
    {
        try
        {
            string layouts = Path.Combine(folder.Root, "layouts");
            HashSet<string> kept = [.. files.Select(file => Path.GetFileName(file.RelativePath))];
            foreach (string old in Directory.Exists(layouts) ? Directory.EnumerateFiles(layouts, "*.svg").Where(path => !kept.Contains(Path.GetFileName(path))) : [])
            {
                File.Delete(old);
            }

            foreach (EmittedFile file in files)
            {
                SharedFile.Write(Path.Combine(folder.Root, file.RelativePath), file.Bytes.Span);
            }

            return null;
        }
        catch (Exception fault) when (DiskFaults.IsDiskFault(fault))
        {
            return (DiskFaults.StatusOf(fault), DiskFaults.FindingOf(fault, folder.Root));
        }
    }
}
