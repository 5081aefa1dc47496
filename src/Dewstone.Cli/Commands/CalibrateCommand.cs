using System.CommandLine;

namespace Dewstone.Cli.Commands;

/// <summary><c>dewstone calibrate</c>: figures of needles and mixes from measurements.</summary>
internal static class CalibrateCommand
{
    public static Command Create(Surroundings world) => new("calibrate", "Get the figures of needles or of a mix from measurements.")
    {
        CalibrateNeedlesCommand.Create(world),
        CalibrateMixCommand.Create(world),
    };

    /// <summary><c>-o</c>.</summary>
    internal static Option<string> Output(string description) => new("--output", "-o") { Description = description, HelpName = "FILE", Required = true };

    /// <summary><c>--pictures</c>.</summary>
    internal static Option<string?> Pictures() => new("--pictures") { Description = "Folder that gets charts as SVG.", HelpName = "DIR" };
}
