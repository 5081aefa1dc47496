using System.CommandLine;
using System.Text;
using Dewstone.Cli.Rendering;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Schema;

namespace Dewstone.Cli.Commands;

/// <summary><c>dewstone new KIND FILE</c>: a commented description to start from; never overwrites.</summary>
internal static class NewCommand
{
    public static Command Create(Surroundings world)
    {
        Argument<DescriptionKind> kind = DescriptionKindArgument.Create();
        Argument<string> file = new("FILE") { Description = "File to write; must not exist yet." };
        Command command = new("new", "Write a commented description to start from.") { kind, file };
        command.SetAction(async (parse, cancellation) =>
        {
            string path = parse.GetRequiredValue(file);
            DescriptionKind wanted = parse.GetRequiredValue(kind);
            if (path.StartsWith('-'))
            {
                throw new UsageException($"unknown option '{path}'; put ./ before the name of a file that begins with a dash.");
            }

            string text = TemplateWriter.Write(wanted);
            try
            {
                await using FileStream stream = new(path, FileMode.CreateNew, FileAccess.Write);
                await stream.WriteAsync(Encoding.UTF8.GetBytes(text), cancellation).ConfigureAwait(false);
            }
            catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException)
            {
                string why = System.IO.File.Exists(path) ? "it exists already; nothing was changed" : fault.Message;
                await world.Error.WriteLineAsync(ProgramText.Of(ProgramFindings.Output, $"cannot write '{path}': {why}")).ConfigureAwait(false);
                return ExitCode.CannotCreate;
            }

            string suffix = $".{wanted.ToString().ToLowerInvariant()}.yaml";
            await world.Output.WriteLineAsync($"Wrote {path}").ConfigureAwait(false);
            if (!path.EndsWith(suffix, StringComparison.Ordinal))
            {
                await world.Output.WriteLineAsync($"  by custom such a file is named *{suffix}").ConfigureAwait(false);
            }

            return ExitCode.Done;
        });
        return command;
    }
}
