using System.CommandLine;

namespace Dewstone.Cli.Commands;

/// <summary><c>dewstone compile</c>: description to job folder.</summary>
internal static class CompileCommand
{
    public static Command Create(Surroundings world)
    {
        JobOptions shared = new();
        Option<string> output = new("--output", "-o") { Description = "Folder that gets NAME.job for each unit.", HelpName = "DIR", Required = true };
        Option<bool> field = new("--field") { Description = "Also write the raw moisture field." };
        Command command = new("compile", "Compile descriptions into job folders.") { output, field };
        shared.AddTo(command);
        command.SetAction((parse, cancellation) =>
        {
            UnitRunner runner = new(shared.Read(parse, world), world) { OutputFolder = parse.GetRequiredValue(output), WithField = parse.GetValue(field) };
            return runner.RunAsync(cancellation);
        });
        return command;
    }
}
