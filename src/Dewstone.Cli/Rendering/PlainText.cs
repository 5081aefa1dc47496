namespace Dewstone.Cli.Rendering;

/// <summary>Text of a stranger - a file's words, a path, a word of the command line - made fit for a terminal: nothing in it moves the cursor or changes a colour.</summary>
internal static class PlainText
{
    private const char Stand = '\u00B7';

    /// <summary>The text without control characters but line feeds and tabs.</summary>
    /// <param name="text">Any text.</param>
    /// <returns>The same text where it holds none, else with a dot for each.</returns>
    public static string Of(string text) => text.Any(IsHarmful) ? string.Concat(text.Select(c => IsHarmful(c) ? Stand : c)) : text;

    private static bool IsHarmful(char c) => char.IsControl(c) && c is not ('\n' or '\t');
}
