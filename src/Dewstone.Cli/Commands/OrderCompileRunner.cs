using Dewstone.Cli.Rendering;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Folders;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Orders.Batches;
using Dewstone.Orders.Plans;
using Dewstone.Reading;

namespace Dewstone.Cli.Commands;

/// <summary>Reads an order and its plan, compiles it or a task's share, and says what came of it.</summary>
/// <param name="request">What was asked for.</param>
/// <param name="world">Where to write.</param>
internal sealed class OrderCompileRunner(OrderCompileRequest request, Surroundings world)
{
    private readonly OrderFolder folder = OrderFolder.Of(request.OutputFolder, request.Order);

    /// <summary>Runs.</summary>
    /// <param name="cancellation">Asks for an orderly end.</param>
    /// <returns>The exit code.</returns>
    /// <exception cref="OperationCanceledException">Stopped.</exception>
    public async Task<int> RunAsync(CancellationToken cancellation)
    {
        OrderCompileOutcome outcome = await ProgressDisplay.RunAsync(
            world, request.Quiet, Path.GetFileName(folder.Root), progress => Run(progress, cancellation)).ConfigureAwait(false);
        await world.Output.WriteAsync(request.Json ? OrderCompileJson.Of(outcome, request.Task, request.Tasks) : OrderCompileText.Of(outcome, world.Colour, request.Quiet))
            .ConfigureAwait(false);
        return outcome.ExitCode;
    }

    private OrderCompileOutcome Run(IProgress<Progress> progress, CancellationToken cancellation)
    {
        progress.Report(new Progress("reading", 0.0));
        OrderReading reading = DescriptionReader.ReadOrderFiles(request.Order, request.Root);
        DiagnosticBag findings = new();
        findings.AddRange(reading.Diagnostics);
        if (findings.HasErrors || reading.Order is not { } order)
        {
            return Refused(reading, findings, ExitCode.InputAtFault);
        }

        if (JobFolderWriter.Examine(folder.Bins, Path.GetFileName(folder.Root)) is { } obstacle)
        {
            findings.Add(obstacle);
            return Refused(reading, findings, ExitCode.CannotCreate);
        }

        try
        {
            OrderPin pin = OrderBegin.PinOf(reading, request.Cells, ToolVersion.Text);
            if (OrderBegin.Hold(pin, folder) is { } changed)
            {
                findings.Add(changed);
                return Refused(reading, findings, ExitCode.InputAtFault);
            }

            (OrderPlan? plan, int refusal) = Plan(reading, findings, progress, cancellation);
            if (plan is null)
            {
                return Refused(reading, findings, refusal);
            }

            SharedFile.Write(folder.Pin, RecordJson.Of(pin));
            BatchQuestion question = new()
            {
                Reading = reading,
                Plan = plan,
                Folder = folder,
                Cells = request.Cells,
                Parallelism = request.Parallelism,
                ToolVersion = ToolVersion.Text,
                Task = request.Task,
                Tasks = request.Tasks,
                Continue = request.Continue,
            };
            world.BoundMemory(OrderCompiler.MemoryBytes(question));
            BatchResult result = OrderCompiler.Compile(question, progress, cancellation);
            OrderCompileOutcome outcome = Outcome(reading, result, findings);
            Report(reading, outcome);
            return outcome;
        }
        catch (Exception fault) when (DiskFaults.IsDiskFault(fault))
        {
            findings.Add(DiskFaults.FindingOf(fault, folder.Root));
            return Refused(reading, findings, ExitCode.Of(DiskFaults.StatusOf(fault), ExitCode.TryAgain));
        }
    }

    // The plan that stands in the folder, else one made now: tasks that start at once make the same, and the first one stays.
    private (OrderPlan? Plan, int Refusal) Plan(OrderReading reading, DiagnosticBag findings, IProgress<Progress> progress, CancellationToken cancellation)
    {
        OrderPlan? standing = OrderPlanFile.Read(reading, folder, findings);
        if (standing is not null || findings.HasErrors)
        {
            return (standing, ExitCode.InputAtFault);
        }

        PlanningResult made = OrderPlanner.Plan(reading, request.Parallelism, progress, cancellation);
        findings.AddRange(made.Findings.Where(finding => !findings.Items.Contains(finding)));
        if (made.Plan is null || findings.HasErrors)
        {
            return (null, made.InputAtFault ? ExitCode.InputAtFault : ExitCode.No);
        }

        // The same files as `order plan` writes, the plan last, so that a folder does not tell which command planned it.
        foreach (EmittedFile file in PlanFiles.Emit(reading, made))
        {
            SharedFile.WriteOnce(Path.Combine(folder.Root, file.RelativePath), file.Bytes.Span);
        }

        return (OrderPlanFile.Read(reading, folder, findings), ExitCode.InputAtFault);
    }

    private OrderCompileOutcome Outcome(OrderReading reading, BatchResult result, DiagnosticBag findings)
    {
        findings.AddRange(result.Findings);
        foreach (BinOutcome bin in result.Bins)
        {
            findings.AddRange(bin.Findings);
            findings.AddRange(bin.Record?.Findings ?? []);
            findings.AddRange(bin.Units.Select(unit => UnitVerdict.Of(unit, reading)).OfType<Diagnostic>());
        }

        int code = ExitCode.Combine([.. result.Bins.Select(OrderCompileOutcome.CodeOf), result.Findings.Any(f => f.Severity == Severity.Error) ? ExitCode.InputAtFault : ExitCode.Done]);
        return new OrderCompileOutcome(reading.Order!.Name, folder.Root, result.Bins, findings.Items, code);
    }

    private void Report(OrderReading reading, OrderCompileOutcome outcome)
    {
        if (request.Task is { } task)
        {
            string[] failed = [.. outcome.Bins.SelectMany(bin => bin.Units).Where(unit => unit.State == UnitState.Failed).Select(unit => unit.Mark)];
            SharedFile.Write(
                folder.Task(task, request.Tasks),
                RecordJson.Of(new TaskReport(task, request.Tasks, reading.Hash, [.. outcome.Bins.Select(bin => bin.Name)], failed, outcome.ExitCode)));
        }
    }

    private OrderCompileOutcome Refused(OrderReading reading, DiagnosticBag findings, int code) =>
        new(reading.Order?.Name ?? Path.GetFileName(request.Order), folder.Root, [], findings.Items, code);
}
