using Dewstone.Model.Diagnostics;

namespace Dewstone.Cli.Rendering;

/// <summary>What the program says of its own run, on the error stream: one line with a code.</summary>
internal static class ProgramText
{
    /// <summary>The line.</summary>
    /// <param name="kind">What happened.</param>
    /// <param name="message">One line about it.</param>
    /// <returns>The line without its end.</returns>
    public static string Of(FindingKind kind, string message) => $"dewstone: error {kind.Code}: {PlainText.Of(message.ReplaceLineEndings(" "))}";
}
