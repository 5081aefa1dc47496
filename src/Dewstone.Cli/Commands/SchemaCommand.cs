using System.CommandLine;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Schema;

namespace Dewstone.Cli.Commands;

/// <summary><c>dewstone schema KIND</c>: the JSON Schema of a kind of description.</summary>
internal static class SchemaCommand
{
    public static Command Create(Surroundings world)
    {
        Argument<DescriptionKind> kind = DescriptionKindArgument.Create();
        Command command = new("schema", "Print the JSON Schema (2020-12) of a kind of description, for editors.") { kind };
        command.SetAction(async (parse, _) =>
        {
            await world.Output.WriteAsync(JsonSchemaWriter.Write(parse.GetRequiredValue(kind))).ConfigureAwait(false);
            return ExitCode.Done;
        });
        return command;
    }
}
