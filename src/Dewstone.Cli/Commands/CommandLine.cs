using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Parsing;

namespace Dewstone.Cli.Commands;

/// <summary>Words in, exit code out.</summary>
internal static class CommandLine
{
    /// <summary>Runs one command.</summary>
    /// <param name="args">Words after the program's name.</param>
    /// <param name="world">Where to write and what the terminal is.</param>
    /// <param name="cancellation">Asks for an orderly end.</param>
    /// <returns>The exit code.</returns>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static async Task<int> RunAsync(IReadOnlyList<string> args, Surroundings world, CancellationToken cancellation)
    {
        try
        {
            RootCommand root = CreateRoot(world);
            ParseResult parse = root.Parse(args);
            if (parse.Errors.Count > 0 && parse.Action is not HelpAction)
            {
                return await UsageErrorAsync(parse, world).ConfigureAwait(false);
            }

            InvocationConfiguration settings = new()
            {
                Output = world.Output,
                Error = world.Error,
                EnableDefaultExceptionHandler = false,
                ProcessTerminationTimeout = null,
            };
            return await parse.InvokeAsync(settings, cancellation).ConfigureAwait(false);
        }
        catch (UsageException fault)
        {
            await world.Error.WriteLineAsync($"dewstone: {fault.Message}").ConfigureAwait(false);
            return ExitCode.InputAtFault;
        }
        catch (OutOfMemoryException)
        {
            await world.Error.WriteLineAsync("dewstone: out of memory; try fewer --cells or --threads, or close other programs.").ConfigureAwait(false);
            return ExitCode.TryAgain;
        }
        catch (Exception fault) when (fault is not OperationCanceledException)
        {
            string what = fault.Message.ReplaceLineEndings(" ");
            await world.Error.WriteLineAsync($"dewstone: a fault of ours ({fault.GetType().Name}: {what}); nothing half-written was left. Please report it with the input files.")
                .ConfigureAwait(false);
            return ExitCode.OurFault;
        }
    }

    private static RootCommand CreateRoot(Surroundings world)
    {
        RootCommand root = new("Compiles the description of a reef unit into a print job: how much water at which needle in which layer, and what will set.")
        {
            CompileCommand.Create(world),
            CheckCommand.Create(world),
            DiffCommand.Create(world),
            VerifyCommand.Create(world),
            ResumeCommand.Create(world),
            SurveyCommand.Create(world),
            LimitsCommand.Create(world),
            CalibrateCommand.Create(world),
            OrderCommand.Create(world),
            ExplainCommand.Create(world),
            NewCommand.Create(world),
            SchemaCommand.Create(world),
            CompletionCommand.Create(world),
            ManualCommand.Create(world),
        };
        // `/h` and `/?` may be names of files, and are offered as such when a shell asks what may come next.
        HelpOption help = root.Options.OfType<HelpOption>().Single();
        help.Aliases.Remove("/h");
        help.Aliases.Remove("/?");
        LeaveSwitchesAlone(root);
        return root;
    }

    // A switch takes no word, though true and false are known: a shell that asks what may come next is not to offer them.
    private static void LeaveSwitchesAlone(Command command)
    {
        foreach (Option option in command.Options.Where(option => option.ValueType == typeof(bool)))
        {
            option.CompletionSources.Clear();
        }

        foreach (Command sub in command.Subcommands)
        {
            LeaveSwitchesAlone(sub);
        }
    }

    private static async Task<int> UsageErrorAsync(ParseResult parse, Surroundings world)
    {
        foreach (string message in parse.Errors.Select(e => e.Message).Distinct())
        {
            await world.Error.WriteLineAsync($"dewstone: {message}").ConfigureAwait(false);
        }

        string path = "";
        for (SymbolResult? at = parse.CommandResult; at is CommandResult { Command: { } command }; at = at.Parent)
        {
            path = command is RootCommand ? $"dewstone{path}" : $" {command.Name}{path}";
        }

        await world.Error.WriteLineAsync($"  try: {path} --help").ConfigureAwait(false);
        return ExitCode.InputAtFault;
    }
}
