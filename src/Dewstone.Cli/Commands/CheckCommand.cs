using System.CommandLine;

namespace Dewstone.Cli.Commands;

/// <summary><c>dewstone check</c>: all that compile would find, nothing written.</summary>
internal static class CheckCommand
{
    public static Command Create(Surroundings world)
    {
        JobOptions shared = new();
        Option<bool> drawing = new("--drawing") { Description = "Reading, shape and printer only: no wetting." };
        Command command = new("check", "Say all that compile would find; write nothing.") { drawing };
        shared.AddTo(command);
        command.SetAction((parse, cancellation) =>
        {
            JobRequest request = shared.Read(parse, world);
            if (parse.GetValue(drawing) && request.Trials > 0)
            {
                throw new UsageException("--drawing stops before wetting, where --trials begin; leave out one of them.");
            }

            UnitRunner runner = new(request, world) { DrawingOnly = parse.GetValue(drawing) };
            return runner.RunAsync(cancellation);
        });
        return command;
    }
}
