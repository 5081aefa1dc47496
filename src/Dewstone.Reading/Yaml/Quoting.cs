using System.Text;

namespace Dewstone.Reading.Yaml;

/// <summary>Text of a stranger made fit to stand in a one-line message.</summary>
internal static class Quoting
{
    private const int Longest = 60;

    /// <summary>At most 60 characters, without control characters.</summary>
    /// <param name="text">Any text.</param>
    /// <returns>The text, cut with an ellipsis where it is longer.</returns>
    public static string Short(string text)
    {
        bool clean = text.Length <= Longest;
        foreach (char c in text)
        {
            clean &= !char.IsControl(c) && !char.IsSurrogate(c);
        }

        if (clean)
        {
            return text;
        }

        StringBuilder builder = new();
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (builder.Length >= Longest)
            {
                builder.Append("...");
                break;
            }

            builder.Append(Rune.IsControl(rune) ? " " : rune.ToString());
        }

        return builder.ToString();
    }
}
