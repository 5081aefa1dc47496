using System.Globalization;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Quantities;

/// <summary>
/// Reads a number strictly: digits, one decimal point with digits on both sides, a power of ten if need be (<c>3.2e-6</c>). No comma, no
/// digit groups, no leading zeros, nothing that stands for infinity.
/// </summary>
internal static class NumberText
{
    /// <summary>Splits a text into its number and what follows.</summary>
    /// <param name="text">Whole text.</param>
    /// <param name="number">The number.</param>
    /// <param name="rest">What follows it, trimmed.</param>
    /// <returns>Null when the number is good; else what is wrong with it.</returns>
    public static TextFault? Split(string text, out double number, out string rest)
    {
        TextFault? fault = Split(text, out ReadOnlySpan<char> digits, out rest);
        number = fault is null ? double.Parse(digits, NumberStyles.Float, CultureInfo.InvariantCulture) : 0.0;
        return fault ?? (double.IsFinite(number) ? null : Fault(text, "is too large a number", "write a number below 1e300"));
    }

    /// <summary>Splits a text into its number as written and what follows.</summary>
    /// <param name="text">Whole text.</param>
    /// <param name="number">The number as written.</param>
    /// <param name="rest">What follows it, trimmed.</param>
    /// <returns>Null when the number is written well; else what is wrong with it.</returns>
    public static TextFault? Split(string text, out ReadOnlySpan<char> number, out string rest)
    {
        number = default;
        rest = "";
        int i = text.Length > 0 && text[0] is '+' or '-' ? 1 : 0;
        int first = i;
        i = Digits(text, i);
        if (i == first)
        {
            return Fault(text, "does not begin with a number",
                text.StartsWith('.') ? "write a 0 before the decimal point" : "write the number in digits, with a decimal point where needed");
        }

        if (text[first] == '0' && i - first > 1)
        {
            return Fault(text, "begins with a needless 0", "write the number without leading zeros");
        }

        if (i < text.Length && text[i] == '.')
        {
            int fraction = Digits(text, i + 1);
            if (fraction == i + 1)
            {
                return Fault(text, "has no digit after the decimal point", "write a digit after the point, or leave the point out");
            }

            i = fraction;
        }

        if (i < text.Length && text[i] is 'e' or 'E')
        {
            int sign = i + 1 < text.Length && text[i + 1] is '+' or '-' ? i + 2 : i + 1;
            int exponent = Digits(text, sign);
            i = exponent > sign ? exponent : i;
        }

        rest = text[i..].Trim(' ');
        if (FaultOfRest(text, rest, i) is { } fault)
        {
            return fault;
        }

        number = text.AsSpan(0, i);
        return null;
    }

    /// <summary>A finding about a number.</summary>
    /// <param name="text">The whole text.</param>
    /// <param name="what">What is wrong.</param>
    /// <param name="remedy">What would be right.</param>
    /// <returns>The fault.</returns>
    public static TextFault Fault(string text, string what, string remedy) =>
        new(DescriptionFindings.BadNumber, $"`{Quoting.Short(text)}` {what}", remedy);

    private static TextFault? FaultOfRest(string text, string rest, int end)
    {
        if (rest.Length == 0)
        {
            return null;
        }

        return rest[0] switch
        {
            ',' when DecimalPoint(text, end) is { } corrected =>
                Fault(text, "has a comma in its number",
                    $"write a decimal point, as in `{Quoting.Short(corrected)}`, and no commas between digits"),
            ',' => Fault(text, "has a comma in its number", "write a decimal point, and no commas between digits"),
            ':' => Fault(text, "is written with a colon", "write one number, such as 1.5 h or 90 min for an hour and a half"),
            '.' => Fault(text, "has two decimal points", "write one decimal point, and nothing between groups of digits"),
            '_' or '\'' => Fault(text, "has marks between its digits", "write the digits without marks between them"),
            >= '0' and <= '9' => Fault(text, "has a space in its number", "write the digits without spaces between them"),
            _ => null,
        };
    }

    // 20,5 mm -> 20.5 mm, but nothing for 1,700,000 kg, whose commas mean something else.
    private static string? DecimalPoint(string text, int comma) =>
        text.IndexOf('.') < 0 && text.IndexOf(',',
            comma + 1) < 0 && text[comma] == ',' && comma + 1 < text.Length && char.IsAsciiDigit(text[comma + 1])
            ? string.Concat(text.AsSpan(0, comma), ".", text.AsSpan(comma + 1))
            : null;

    private static int Digits(string text, int from)
    {
        while (from < text.Length && char.IsAsciiDigit(text[from]))
        {
            from++;
        }

        return from;
    }
}
