using System.CommandLine;
using Dewstone.Cli.Rendering;
using Dewstone.Jobs.Folders;
using Dewstone.Model.Diagnostics;
using Dewstone.Orders.Batches;
using Dewstone.Orders.Gathering;
using Dewstone.Reading;

namespace Dewstone.Cli.Commands;

/// <summary><c>dewstone order gather</c>: one folder complete, or what it lacks.</summary>
internal static class OrderGatherCommand
{
    public static Command Create(Surroundings world)
    {
        Argument<string> file = new("ORDER") { Description = "The order's file." };
        Option<string> output = new("--output", "-o") { Description = "Folder that the order was compiled into.", HelpName = "DIR", Required = true };
        Option<string?> root = JobOptions.File("--root", "Folder under which all named files must lie.");
        SharedOptions shared = new();
        Command command = new("gather", "Check that every unit and bin of an order is there, then write its overview, lists, map and manifest; else exit 1 and name what is missing.") { file, output, root };
        shared.AddTo(command);
        command.SetAction(async (parse, cancellation) =>
        {
            bool quiet = parse.GetValue(shared.Quiet);
            string name = parse.GetRequiredValue(file);
            OrderFolder folder = OrderFolder.Of(parse.GetRequiredValue(output), name);
            OrderReading order = DescriptionReader.ReadOrderJobs(name, parse.GetValue(root));
            (GatherResult? result, IReadOnlyList<Diagnostic> findings, int code) = order.Order is null || order.Diagnostics.Any(finding => finding.Severity == Severity.Error)
                ? (null, order.Diagnostics, ExitCode.InputAtFault)
                : await ProgressDisplay.RunAsync(world, quiet, Path.GetFileName(name), progress => Run(order, folder, progress, cancellation)).ConfigureAwait(false);
            string text = parse.GetValue(shared.Json) ? GatherJson.Of(result, findings, folder.Root, code) : GatherText.Of(result, findings, folder.Root, world.Colour, quiet);
            await world.Output.WriteAsync(text).ConfigureAwait(false);
            return code;
        });
        return command;
    }

    private static (GatherResult? Result, IReadOnlyList<Diagnostic> Findings, int Code) Run(OrderReading order, OrderFolder folder, IProgress<Model.Results.Progress> progress, CancellationToken cancellation)
    {
        try
        {
            GatherResult result = new OrderGatherer(order, folder, ToolVersion.Text).Gather(progress, cancellation);
            Diagnostic[] findings = [.. order.Diagnostics, .. result.Findings];
            return (result, findings, findings.Any(finding => finding.Severity == Severity.Error) ? ExitCode.No : ExitCode.Done);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            JobFolderStatus status = DiskFaults.StatusOf(fault);
            FindingKind kind = status == JobFolderStatus.CannotCreate ? YardFindings.CannotWrite : YardFindings.StoreFailed;
            return (null, [.. order.Diagnostics, kind.At($"`{folder.Root}`: {fault.Message.TrimEnd('.').ReplaceLineEndings(" ")}", "mend the folder and gather again; each file stands whole or not at all")], ExitCode.Of(status, ExitCode.Done));
        }
    }
}
