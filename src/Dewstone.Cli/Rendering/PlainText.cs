using System.Text.RegularExpressions;

namespace Dewstone.Cli.Rendering;

/// <summary>Text of a stranger - a file's words, a path, a word of the command line - made fit for a terminal: nothing in it moves the cursor or changes a colour.</summary>
internal static partial class PlainText
{
    private const string Stand = "\u00B7";

    /// <summary>The text without control characters but line feeds and tabs.</summary>
    /// <param name="text">Any text.</param>
    /// <param name="keepsColour">Whether sequences that only colour what follows stay: our own are among them by now.</param>
    /// <returns>The same text where it holds none, else with a dot for each.</returns>
    public static string Of(string text, bool keepsColour = false) =>
        Harmful().Replace(text, match => !match.Groups["colour"].Success ? Stand : keepsColour ? match.Value : Stand + match.Value[1..]);

    // A colour as ECMA-48, 8.3.117 (select graphic rendition).
    [GeneratedRegex(@"(?<colour>\u001b\[[0-9;]*m)|[\p{Cc}-[\n\t]]", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Harmful();
}
