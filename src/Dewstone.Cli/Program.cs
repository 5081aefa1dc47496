using System.Globalization;
using System.Runtime.InteropServices;
using Dewstone.Cli.Commands;

namespace Dewstone.Cli;

internal static class Program
{
    private static async Task<int> Main(string[] args)
    {
        // Answered before the command line library is loaded: scripts ask often, and it halves the work done to answer.
        // The program is built without cultures, but a variable of the environment brings them back, and numbers in pictures would follow them.
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.InvariantCulture;
        Surroundings world = Surroundings.OfProcess();
        if (args is ["--version"])
        {
            return await CommandLine.GuardAsync(world, () => Version(world)).ConfigureAwait(false);
        }

        using CancellationTokenSource stop = new();
        int stopCode = ExitCode.Interrupted;
        void OnSignal(PosixSignalContext context, int code)
        {
            // The first signal asks for an orderly end; a second one ends the program as the system does.
            context.Cancel = !stop.IsCancellationRequested;
            stopCode = code;
            stop.Cancel();
        }

        using PosixSignalRegistration interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, c => OnSignal(c, ExitCode.Interrupted));
        using PosixSignalRegistration terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, c => OnSignal(c, ExitCode.Terminated));
        try
        {
            return await CommandLine.RunAsync(args, world, stop.Token).ConfigureAwait(false);
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            await world.Error.WriteLineAsync("dewstone: stopped; nothing half-written was left.").ConfigureAwait(false);
            return stopCode;
        }
    }

    private static async Task<int> Version(Surroundings world)
    {
        await world.Output.WriteLineAsync(ToolVersion.Text).ConfigureAwait(false);
        return ExitCode.Done;
    }
}
