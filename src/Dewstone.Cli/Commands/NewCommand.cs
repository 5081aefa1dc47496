using System.CommandLine;
using System.Text;
using Dewstone.Cli.Rendering;
using Dewstone.Jobs.Folders;
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
            UsageException.ThrowIfOption(path, parse);

            string text = TemplateWriter.Write(wanted);
            bool isMade = false;
            try
            {
                await using FileStream stream = new(path, FileMode.CreateNew, FileAccess.Write, FileShare.None, bufferSize: 0);
                isMade = true;
                await stream.WriteAsync(Encoding.UTF8.GetBytes(text), cancellation).ConfigureAwait(false);
            }
            catch (Exception fault) when (DiskFaults.IsDiskFault(fault) || fault is ArgumentException)
            {
                string why = !isMade && File.Exists(path) ? "it exists already; nothing was changed"
                    : fault is DirectoryNotFoundException ? $"there is no folder '{Path.GetDirectoryName(path)}'; make it first"
                    : fault.Message;
                await world.Error.WriteLineAsync(ProgramText.Of(ProgramFindings.Output, $"cannot write '{path}': {why}")).ConfigureAwait(false);
                if (!isMade)
                {
                    return ExitCode.CannotCreate;
                }

                File.Delete(path);
                return ExitCode.Of(DiskFaults.StatusOf(fault), ExitCode.TryAgain);
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
