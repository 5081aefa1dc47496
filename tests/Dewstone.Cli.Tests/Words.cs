using Dewstone.Cli.Commands;

namespace Dewstone.Cli.Tests;

/// <summary>Runs the program's words inside the test process.</summary>
internal static class Words
{
    /// <summary>What a run gave.</summary>
    /// <param name="Code">Exit code.</param>
    /// <param name="Output">Standard output.</param>
    /// <param name="Error">Standard error.</param>
    public sealed record Answer(int Code, string Output, string Error);

    public static async Task<Answer> Run(params string[] words)
    {
        using StringWriter output = new() { NewLine = "\n" };
        using StringWriter error = new() { NewLine = "\n" };
        Surroundings world = new() { Output = output, Error = error, Processors = 2 };
        int code = await CommandLine.RunAsync(words, world, CancellationToken.None);
        return new Answer(code, output.ToString(), error.ToString());
    }
}
