using System.CommandLine;

namespace Dewstone.Cli.Commands;

/// <summary><c>dewstone completion SHELL</c>: the script with which a shell asks this program what may come next.</summary>
internal static class CompletionCommand
{
    private static readonly string[] Shells = ["bash", "zsh", "fish"];

    public static Command Create(Surroundings world)
    {
        Argument<string> shell = new("SHELL") { Description = $"One of {string.Join(", ", Shells)}." };
        shell.AcceptOnlyFromAmong(Shells);
        Command command = new("completion", "Print the completion script of a shell; it asks this program, so it never goes stale.") { shell };
        command.SetAction(async (parse, cancellation) =>
        {
            using StreamReader script = new(typeof(CompletionCommand).Assembly.GetManifestResourceStream($"completion.{parse.GetRequiredValue(shell)}")!);
            await world.Output.WriteAsync(await script.ReadToEndAsync(cancellation).ConfigureAwait(false)).ConfigureAwait(false);
            return ExitCode.Done;
        });
        return command;
    }
}
