using System.CommandLine;
using Dewstone.Cli.Rendering;
using Dewstone.Jobs.Folders;
using Dewstone.Model.Diagnostics;
using Dewstone.Orders.Batches;
using Dewstone.Reading;

namespace Dewstone.Cli.Commands;

/// <summary><c>dewstone order status</c>: what of an order is done, missing, stale, failed. Writes nothing.</summary>
internal static class OrderStatusCommand
{
    private const int MostTasks = 1_000_000;

    public static Command Create(Surroundings world)
    {
        Argument<string> order = OrderCompileCommand.OrderArgument();
        Option<string> output = OrderCompileCommand.OutputOption();
        Option<int?> of = WholeNumber.Option("--of", "Number of tasks to tell the missing ones of (default: as the reports of tasks say).", 1, MostTasks);
        Option<string?> root = JobOptions.Root();
        SharedOptions shared = new();
        Command command = new("status", "Say what of an order is done, missing, stale or failed, from its folder.") { order, output, of, root };
        shared.AddTo(command);
        command.SetAction(async (parse, _) =>
        {
            string file = parse.GetRequiredValue(order);
            OrderStatusOutcome outcome = Read(file, OrderFolder.Of(parse.GetRequiredValue(output), file), parse.GetValue(root), parse.GetValue(of));
            await world.Output.WriteAsync(parse.GetValue(shared.Json) ? OrderStatusJson.Of(outcome) : OrderStatusText.Of(outcome, world.Colour, parse.GetValue(shared.Quiet)))
                .ConfigureAwait(false);
            return outcome.ExitCode;
        });
        return command;
    }

    private static OrderStatusOutcome Read(string file, OrderFolder folder, string? root, int? tasks)
    {
        OrderReading reading = DescriptionReader.ReadOrderFiles(file, root);
        DiagnosticBag findings = new();
        findings.AddRange(reading.Diagnostics.Where(finding => finding.Severity == Severity.Error));
        OrderStatusOutcome none = new(reading.Order?.Name ?? Path.GetFileName(file), folder.Root, null, [], findings.Items, ExitCode.InputAtFault);
        if (findings.HasErrors)
        {
            return none;
        }

        try
        {
            if (OrderPlanFile.Read(reading, folder, findings) is not { } plan)
            {
                return none with { Findings = findings.Items, ExitCode = findings.HasErrors ? ExitCode.InputAtFault : ExitCode.No };
            }

            OrderState state = OrderState.Read(reading, plan, folder, ToolVersion.Text);
            int[] counts = tasks is { } asked ? [asked] : [.. state.TaskCounts];
            return none with
            {
                State = state,
                MissingTasks = [.. counts.Select(count => (count, TaskNumbers.Text(state.MissingTasks(count))))],
                ExitCode = state.Complete ? ExitCode.Done : ExitCode.No,
            };
        }
        catch (Exception fault) when (DiskFaults.IsDiskFault(fault))
        {
            findings.Add(DiskFaults.FindingOf(fault, folder.Root));
            return none with { Findings = findings.Items, ExitCode = ExitCode.TryAgain };
        }
    }
}
