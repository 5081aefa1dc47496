using System.CommandLine;

namespace Dewstone.Cli;

internal static class Program
{
    private static int Main(string[] args) =>
        new RootCommand("Compiles a reef unit's description into a print job.").Parse(args).Invoke();
}
