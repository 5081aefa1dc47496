using System.CommandLine;
using Dewstone.Cli.Rendering;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Cli.Commands;

/// <summary><c>dewstone explain CODE</c>: the page of a finding.</summary>
internal static class ExplainCommand
{
    public static Command Create(Surroundings world)
    {
        Argument<string?> code = new("CODE") { Description = "A finding's code, such as DW2001; without it all codes are listed.", HelpName = "CODE", Arity = ArgumentArity.ZeroOrOne };
        code.CompletionSources.Add(_ => DiagnosticCatalogue.All.Select(k => new System.CommandLine.Completions.CompletionItem(k.Code)));
        Command command = new("explain", "Say what a finding means, why it matters and what to do.") { code };
        command.SetAction(async (parse, _) =>
        {
            if (parse.GetValue(code) is not { } wanted)
            {
                await world.Output.WriteAsync(ExplainPage.List()).ConfigureAwait(false);
                return ExitCode.Done;
            }

            FindingKind kind = DiagnosticCatalogue.Find(wanted) ??
                throw new UsageException($"there is no finding '{wanted}'; 'dewstone explain' lists them all.");
            await world.Output.WriteAsync(ExplainPage.Of(kind)).ConfigureAwait(false);
            return ExitCode.Done;
        });
        return command;
    }
}
