using Dewstone.Cli.Rendering;

namespace Dewstone.Cli;

/// <summary>What the program sees of the world: where it writes and what the terminal is; tests bring their own.</summary>
internal sealed record Surroundings
{
    /// <summary>Results.</summary>
    public required TextWriter Output { get; init; }

    /// <summary>Progress and complaints.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>Whether <see cref="Error"/> is a terminal, so that bars can be drawn.</summary>
    public bool ErrorIsTerminal { get; init; }

    /// <summary>Whether colour is wanted on <see cref="Output"/>: it is a terminal and NO_COLOR is not set.</summary>
    public bool Colour { get; init; }

    /// <summary>Processors this process may use.</summary>
    public required int Processors { get; init; }

    /// <summary>Sets a bound to the memory of the whole process, bytes; does nothing where others run in it.</summary>
    public Action<long> BoundMemory { get; init; } = _ => { };

    /// <summary>The terminal itself, for bars, which move its cursor; null for <see cref="Error"/>.</summary>
    public TextWriter? Terminal { get; init; }

    /// <summary>The same, but whatever a stranger's names hold, nothing of it moves a cursor.</summary>
    /// <returns>The surroundings to run in.</returns>
    public Surroundings Plain() => this with { Output = new PlainWriter(Output, Colour), Error = new PlainWriter(Error, keepsColour: false), Terminal = Error };

    /// <summary>The world of the running process.</summary>
    /// <returns>Console streams and the environment's wishes.</returns>
    public static Surroundings OfProcess()
    {
        bool noColour = !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"));
        return new Surroundings
        {
            Output = new StandardStream(Console.Out, isError: false),
            // Bars are drawn only on what is known to be the terminal itself.
            Error = Console.IsErrorRedirected ? new StandardStream(Console.Error, isError: true) : Console.Error,
            ErrorIsTerminal = !Console.IsErrorRedirected,
            Colour = !noColour && !Console.IsOutputRedirected,
            BoundMemory = bytes =>
            {
                AppContext.SetData("GCHeapHardLimit", (ulong)bytes);
                GC.RefreshMemoryLimit();
            },
            Processors = ProcessorAllowance.Of(Environment.ProcessorCount, Environment.GetEnvironmentVariable(ProcessorAllowance.Granted)),
        };
    }
}
