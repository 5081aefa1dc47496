using System.CommandLine;
using Dewstone.Cli.Rendering;

namespace Dewstone.Cli.Commands;

/// <summary><c>dewstone manual</c>: the manual page of every command.</summary>
internal static class ManualCommand
{
    public static Command Create(Surroundings world)
    {
        Command command = new("manual", "Print the manual page as man(1) reads it: dewstone manual | man -l -");
        command.SetAction(async (parse, _) =>
        {
            await world.Output.WriteAsync(ManualPage.Of((RootCommand)parse.RootCommandResult.Command)).ConfigureAwait(false);
            return ExitCode.Done;
        });
        return command;
    }
}
