using System.CommandLine;
using System.Globalization;

namespace Dewstone.Cli.Commands;

/// <summary><c>dewstone order compile</c>: an order to its bin jobs, on this machine or as one task of many.</summary>
internal static class OrderCompileCommand
{
    private const int MostTasks = 1_000_000;

    public static Command Create(Surroundings world)
    {
        Argument<string> order = OrderArgument();
        Option<string> output = OutputOption();
        Option<int?> task = WholeNumber.Option("--task", "Make only this task's share of the bins, counted from 0; needs --of.", 0, MostTasks - 1);
        Option<int?> of = WholeNumber.Option("--of", "Number of tasks the bins are shared among.", 1, MostTasks);
        Option<string?> taskFrom = new("--task-from") { Description = "Take the task from this environment variable, such as SLURM_ARRAY_TASK_ID.", HelpName = "VARIABLE" };
        Option<bool> goOn = new("--continue") { Description = "Keep every bin that is done and whole, and make the rest." };
        Option<int?> cells = JobOptions.Cells();
        Option<string?> root = JobOptions.Root();
        SharedOptions shared = new();
        Command command = new("compile", "Compile an order: every unit once, then one job a bin.") { order, output, task, of, taskFrom, goOn, cells, root };
        shared.AddTo(command);
        command.SetAction((parse, cancellation) =>
        {
            (int? number, int tasks) = Slice(parse.GetValue(task), parse.GetValue(taskFrom), parse.GetValue(of));
            OrderCompileRequest request = new()
            {
                Order = parse.GetRequiredValue(order),
                OutputFolder = parse.GetRequiredValue(output),
                Root = parse.GetValue(root),
                Cells = parse.GetValue(cells) ?? JobOptions.DefaultCells,
                Parallelism = shared.Threads(parse, world),
                Task = number,
                Tasks = tasks,
                Continue = parse.GetValue(goOn),
                Json = parse.GetValue(shared.Json),
                Quiet = parse.GetValue(shared.Quiet),
            };
            return new OrderCompileRunner(request, world).RunAsync(cancellation);
        });
        return command;
    }

    /// <summary><c>ORDER</c>.</summary>
    internal static Argument<string> OrderArgument() => new("ORDER") { Description = "Order description, *.order.yaml." };

    /// <summary><c>-o</c>.</summary>
    internal static Option<string> OutputOption() =>
        new("--output", "-o") { Description = "Folder that holds the order's folder, named like the order's file.", HelpName = "DIR", Required = true };

    private static (int? Task, int Tasks) Slice(int? task, string? variable, int? of)
    {
        if (task is not null && variable is not null)
        {
            throw new UsageException("--task and --task-from both name the task; give one of them.");
        }

        if (variable is not null)
        {
            string? value = Environment.GetEnvironmentVariable(variable);
            task = int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number
                : throw new UsageException($"--task-from: the variable {variable} {(value is null ? "is not set" : $"is '{value}'")}; a whole number from 0 is due.");
        }

        return (task, of) switch
        {
            (null, null) => (null, 1),
            ({ } number, { } tasks) when number < tasks => (number, tasks),
            ({ } number, { } tasks) => throw new UsageException($"task {number} of {tasks}: tasks count from 0, so the last is {tasks - 1}."),
            _ => throw new UsageException("--of goes with --task or --task-from: both are needed, or neither."),
        };
    }
}
