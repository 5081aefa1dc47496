using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Parsing;
using System.Runtime.ExceptionServices;
using Dewstone.Cli.Rendering;
using Dewstone.Jobs.Folders;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Binding;

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
        world = world.Plain();
        return await GuardAsync(world, async () =>
        {
            if (args.TakeWhile(word => word.StartsWith('[') && word.EndsWith(']')).Count() > 1)
            {
                throw new UsageException("only one word in brackets may stand before the command.");
            }

            RootCommand root = CreateRoot(world);
            ParseResult parse = root.Parse(args);
            if (parse.Errors.Count > 0 && parse.Action is not HelpAction)
            {
                return await UsageErrorAsync(parse, world).ConfigureAwait(false);
            }

            RefuseLostWords(parse);
            InvocationConfiguration settings = new()
            {
                Output = world.Output,
                Error = world.Error,
                EnableDefaultExceptionHandler = false,
                ProcessTerminationTimeout = null,
            };
            return await parse.InvokeAsync(settings, cancellation).ConfigureAwait(false);
        }).ConfigureAwait(false);
    }

    /// <summary>Runs something to an exit code, whatever becomes of it.</summary>
    /// <param name="world">Where to complain.</param>
    /// <param name="run">What to run.</param>
    /// <returns>The exit code.</returns>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static async Task<int> GuardAsync(Surroundings world, Func<Task<int>> run)
    {
        try
        {
            return await UnbundledAsync(run).ConfigureAwait(false);
        }
        catch (UsageException fault)
        {
            return await SayAsync(ProgramFindings.Usage, fault.Message, ExitCode.InputAtFault).ConfigureAwait(false);
        }
        catch (OutputFaultException fault)
        {
            return await SayAsync(
                ProgramFindings.Output, $"standard output cannot be written: {fault.Message}", fault.MayPass ? ExitCode.TryAgain : ExitCode.CannotCreate).ConfigureAwait(false);
        }
        catch (OutOfMemoryException)
        {
            return await SayAsync(ProgramFindings.Memory, "out of memory; try fewer --cells or --threads, or close other programs", ExitCode.TryAgain).ConfigureAwait(false);
        }
        catch (Exception fault) when (DiskFaults.IsDiskFault(fault))
        {
            return await SayAsync(ProgramFindings.Disk, $"{fault.Message.TrimEnd('.')}; run the same command again", ExitCode.TryAgain).ConfigureAwait(false);
        }
        catch (Exception fault) when (fault is not OperationCanceledException)
        {
            return await SayAsync(
                ProgramFindings.Fault, $"a fault of ours ({fault.GetType().Name}: {fault.Message}); nothing half-written was left. Please report it with the input files",
                ExitCode.OurFault).ConfigureAwait(false);
        }

        async Task<int> SayAsync(FindingKind kind, string message, int code)
        {
            await world.Error.WriteLineAsync(ProgramText.Of(kind, message)).ConfigureAwait(false);
            return code;
        }
    }

    // Loops on several threads bundle what went wrong in them, bundles of bundles among them. Want of memory says more than what followed from it, and a stop less than a fault.
    private static async Task<int> UnbundledAsync(Func<Task<int>> run)
    {
        try
        {
            return await run().ConfigureAwait(false);
        }
        catch (AggregateException several)
        {
            ExceptionDispatchInfo.Throw(several.Flatten().InnerExceptions.MinBy(fault => fault switch { OutOfMemoryException => 0, OperationCanceledException => 2, _ => 1 })!);
            throw;
        }
    }

    // An unset variable of a script, `-o "$folder"`, is empty or, without its quotes, hands the next option over in its place. What a shell asks of completion may end with nothing.
    private static void RefuseLostWords(ParseResult parse)
    {
        HashSet<string> options = [.. parse.CommandResult.Command.Options.SelectMany(option => option.Aliases.Prepend(option.Name))];
        Token? before = null;
        foreach (Token word in parse.Tokens.TakeWhile(word => word.Type != TokenType.Directive || !word.Value.StartsWith("[suggest", StringComparison.Ordinal)))
        {
            if (word.Value.Length == 0)
            {
                throw new UsageException(before is { Type: TokenType.Option } ? $"the word after {before.Value} is empty." : "one of the words is empty; if it is a variable, it is not set.");
            }

            if (before is { Type: TokenType.Option } && word.Type == TokenType.Argument && options.Contains(word.Value))
            {
                throw new UsageException($"{before.Value} has no value: {word.Value} after it is an option itself; put ./ before the name of a file that begins with a dash.");
            }

            before = word;
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

    // Where a command is due, the parser tells each word it could not place and that a command is missing: here it is one line that says which there are.
    private static IEnumerable<string> Complaints(ParseResult parse)
    {
        string[] commands = [.. parse.CommandResult.Command.Subcommands.Select(command => command.Name)];
        if (commands.Length == 0)
        {
            return parse.Errors.Select(e => e.Message).Distinct();
        }

        string which = $"the commands are {string.Join(", ", commands)}.";
        return parse.UnmatchedTokens is not [string word, ..] ? [$"a command is missing; {which}"]
            : Spelling.Nearest(word, commands) is { } near ? [$"there is no command '{word}'; did you mean '{near}'? {which}"]
            : [$"there is no command '{word}'; {which}"];
    }

    private static async Task<int> UsageErrorAsync(ParseResult parse, Surroundings world)
    {
        foreach (string message in Complaints(parse))
        {
            await world.Error.WriteLineAsync(ProgramText.Of(ProgramFindings.Usage, message)).ConfigureAwait(false);
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
