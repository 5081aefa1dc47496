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
            JobRequest request = shared.Read(parse, world);
            if (request.Sites.Count > 1)
            {
                throw new UsageException("a job is made for one site; compare sites with check.");
            }

            UnitRunner runner = new(request, world) { OutputFolder = parse.GetRequiredValue(output), WithField = parse.GetValue(field) };
            return runner.RunAsync(cancellation);
        });
        return command;
    }
}
