using Dewstone.Model.Diagnostics;

namespace Dewstone.Reading.Yaml;

/// <summary>
/// Faults of a text that the YAML library reports at the wrong place or not at all: tabs in the indentation, control characters.
/// </summary>
internal static class TextScan
{
    /// <summary>Looks through a text.</summary>
    /// <param name="text">The whole text.</param>
    /// <param name="file">File name for findings.</param>
    /// <param name="findings">Takes at most one finding of each sort.</param>
    /// <returns>True when the text may be handed to the library.</returns>
    public static bool Passes(string text, string file, DiagnosticBag findings)
    {
        bool tabSeen = false;
        bool indentation = true;
        int line = 1;
        int column = 0;
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            column++;
            if (c == '\n')
            {
                line++;
                column = 0;
                indentation = true;
            }
            else if (c == '\t')
            {
                if (indentation && !tabSeen)
                {
                    tabSeen = true;
                    findings.Add(DescriptionFindings.TabInIndentation.At(
                        "a tab stands in the indentation", "indent with spaces; most editors can do that for you",
                        location: new SourceLocation(file, line, column)));
                }
            }
            else if (char.IsControl(c) && c is not ('\r' or '\u0085'))
            {
                findings.Add(DescriptionFindings.BrokenYaml.At(
                    $"this is not readable YAML: the control character U+{(int)c:X4} stands here",
                    "delete it; is this a text file?", location: new SourceLocation(file, line, column)));
                return false;
            }
            else if (c != ' ')
            {
                indentation = false;
            }
        }

        return !tabSeen;
    }
}
