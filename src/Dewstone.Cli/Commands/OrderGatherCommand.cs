using System.CommandLine;
using Dewstone.Cli.Rendering;
using Dewstone.Jobs.Folders;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Orders.Batches;
using Dewstone.Orders.Gathering;
using Dewstone.Reading;

namespace Dewstone.Cli.Commands;

/// <summary><c>dewstone order gather</c>: one folder complete, or what it lacks.</summary>
internal static class OrderGatherCommand
{
    public static Command Create(Surroundings world)
    {
        Argument<string> file = OrderCompileCommand.OrderArgument();
        Option<string> output = OrderCompileCommand.OutputOption();
        Option<string?> root = JobOptions.Root();
        SharedOptions shared = new();
        Command command = new("gather", "Check that every unit and bin of an order is there, then write its overview, lists, map and manifest; else exit 1 and name what is missing.") { file, output, root };
        shared.AddTo(command);
        command.SetAction(async (parse, cancellation) =>
        {
            bool quiet = parse.GetValue(shared.Quiet);
            string name = parse.GetRequiredValue(file);
            OrderFolder folder = OrderFolder.Of(parse.GetRequiredValue(output), name);
            OrderReading order = DescriptionReader.ReadOrderFiles(name, parse.GetValue(root));
            (GatherResult? result, IReadOnlyList<Diagnostic> findings, int code) = order.Order is null || order.Diagnostics.Any(finding => finding.Severity == Severity.Error)
                ? (null, order.Diagnostics, ExitCode.InputAtFault)
                : await ProgressDisplay.RunAsync(world, quiet, Path.GetFileName(name), progress => Run(order, folder, progress, cancellation)).ConfigureAwait(false);
            string text = parse.GetValue(shared.Json) ? GatherJson.Of(result, findings, folder.Root, code) : GatherText.Of(result, findings, folder.Root, world.Colour, quiet);
            await world.Output.WriteAsync(text).ConfigureAwait(false);
            return code;
        });
        return command;
    }

    private static (GatherResult? Result, IReadOnlyList<Diagnostic> Findings, int Code) Run(OrderReading order, OrderFolder folder, IProgress<Progress> progress, CancellationToken cancellation)
    {
        try
        {
            GatherResult result = new OrderGatherer(order, folder, ToolVersion.Text).Gather(progress, cancellation);
            Diagnostic[] findings = [.. order.Diagnostics, .. result.Findings];
            return (result, findings, findings.Any(finding => finding.Severity == Severity.Error) ? ExitCode.No : ExitCode.Done);
        }
        catch (Exception fault) when (DiskFaults.IsDiskFault(fault))
        {
            return (null, [.. order.Diagnostics, DiskFaults.FindingOf(fault, folder.Root)], ExitCode.Of(DiskFaults.StatusOf(fault), ExitCode.TryAgain));
        }
    }
}
