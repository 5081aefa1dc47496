using System.CommandLine;
using Dewstone.Model.Results;

namespace Dewstone.Cli.Commands;

/// <summary>Words that every command about jobs takes.</summary>
internal sealed class SharedOptions
{
    private const int MostThreads = 256;

    private readonly Option<int?> threads = WholeNumber.Option("--threads", "Threads to use (default: the processors this process may use); no result depends on it.", 1, MostThreads);

    /// <summary>One JSON document on standard output.</summary>
    public Option<bool> Json { get; } = new("--json") { Description = "One JSON document on standard output, nothing else there." };

    /// <summary>No progress, no notes.</summary>
    public Option<bool> Quiet { get; } = new("--quiet") { Description = "No progress; findings of level note are left out of the text." };

    /// <summary>Adds the words to a command.</summary>
    /// <param name="command">The command.</param>
    public void AddTo(Command command)
    {
        command.Options.Add(threads);
        command.Options.Add(Json);
        command.Options.Add(Quiet);
    }

    /// <summary>Threads asked for.</summary>
    /// <param name="parse">The parsed words.</param>
    /// <param name="world">Decides the default.</param>
    /// <returns>The threads.</returns>
    public Parallelism Threads(ParseResult parse, Surroundings world) => new(parse.GetValue(threads) ?? Math.Max(1, world.Processors));
}
