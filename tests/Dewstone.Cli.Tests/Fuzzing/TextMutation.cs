using System.Text;
using System.Text.RegularExpressions;

namespace Dewstone.Cli.Tests.Fuzzing;

/// <summary>Changes a text that was sound as slips, bad exports and malice do: lines, keys, values, brackets, nesting, sizes.</summary>
internal static partial class TextMutation
{
    private const int MostLetters = 4_000_000;

    private static readonly Func<Dice, string, string>[] All =
    [
        Token, Token, Token, Token, Number, Number, Number, Unit, Insert, Sign, LineOut, LineTwice, LinesSwapped, LineMany, Indented, Cut, Nest, Alias, Key, Key, Spliced, Long,
    ];

    /// <summary>One to four changes.</summary>
    public static string Apply(Dice dice, string text)
    {
        for (int changes = dice.Of([1, 1, 1, 2, 2, 4]); changes > 0; changes--)
        {
            text = dice.Of(All)(dice, text);
        }

        return text;
    }

    private static string Token(Dice dice, string text) => Replaced(dice, text, Tokens(), _ => dice.Below(4) switch
    {
        0 => dice.Of(Nasty.Words),
        1 => dice.Of(Nasty.Paths),
        2 => Tokens().Matches(text) is { Count: > 0 } all ? all[dice.Below(all.Count)].Value : "",
        _ => dice.Of(Nasty.Numbers),
    });

    private static string Number(Dice dice, string text) => Replaced(dice, text, Digits(), old => dice.Below(6) switch
    {
        0 => "-" + old,
        1 => old + "0",
        2 => old + "e" + dice.Of(["1", "-1", "3", "-3", "6", "30", "-30"]),
        3 => old[..^1],
        _ => dice.Of(Nasty.Numbers),
    });

    private static string Unit(Dice dice, string text) => Replaced(dice, text, UnitsOfMeasure(), _ => dice.OnceIn(3) ? "" : dice.Of(Nasty.Units));

    private static string Key(Dice dice, string text) => Replaced(dice, text, Keys(), old => dice.Below(5) switch
    {
        0 => old[..^1],
        1 => old.ToUpperInvariant(),
        2 => dice.Of(Nasty.Words),
        3 => Keys().Matches(text) is { Count: > 0 } all ? all[dice.Below(all.Count)].Value : "",
        _ => old + "x",
    });

    private static string Insert(Dice dice, string text) => text.Insert(dice.Below(text.Length + 1), dice.OnceIn(2) ? dice.Of(Nasty.Words) : dice.Of(Nasty.Paths));

    private static string Sign(Dice dice, string text) => Replaced(dice, text, Signs(), _ => dice.Of([":", ",", "[", "]", "{", "}", "\"", "'", "-", "#", "\n", " ", "", ";", "\t"]));

    private static string LineOut(Dice dice, string text) => Lines(text, lines => lines.RemoveAt(dice.Below(lines.Count)));

    private static string LineTwice(Dice dice, string text) => Lines(text, lines => lines.Insert(dice.Below(lines.Count), lines[dice.Below(lines.Count)]));

    private static string LineMany(Dice dice, string text) => Lines(text, lines => lines.InsertRange(dice.Below(lines.Count), Enumerable.Repeat(lines[dice.Below(lines.Count)], dice.Of([2, 20, 200]))));

    private static string LinesSwapped(Dice dice, string text) => Lines(text, lines =>
    {
        (int a, int b) = (dice.Below(lines.Count), dice.Below(lines.Count));
        (lines[a], lines[b]) = (lines[b], lines[a]);
    });

    private static string Indented(Dice dice, string text) => Lines(text, lines =>
    {
        int at = dice.Below(lines.Count);
        lines[at] = dice.Below(3) switch { 0 => lines[at].TrimStart(), 1 => "  " + lines[at], _ => "\t" + lines[at] };
    });

    private static string Cut(Dice dice, string text) => text[..dice.Below(text.Length + 1)];

    private static string Spliced(Dice dice, string text) => text.Insert(dice.Below(text.Length + 1), text[dice.Below(text.Length + 1)..]);

    private static string Nest(Dice dice, string text)
    {
        int depth = dice.Of([2, 8, 40, 70, 3000]);
        (string open, string close) = dice.Of([("[", "]"), ("{a: ", "}"), ("- ", ""), ("{\"a\":", "}"), ("? ", "")]);
        return Replaced(dice, text, Tokens(), old => Many(open, depth) + old + Many(close, dice.OnceIn(2) ? depth : 0));
    }

    private static string Alias(Dice dice, string text)
    {
        StringBuilder bomb = new("a0: &a0 [x, x]\n");
        for (int level = 1; level < 40; level++)
        {
            bomb.Append(null, $"a{level}: &a{level} [*a{level - 1}, *a{level - 1}, *a{level - 1}]\n");
        }

        return dice.OnceIn(2) ? bomb + text : text + bomb;
    }

    private static string Long(Dice dice, string text) => Replaced(dice, text, Tokens(), old => Many(dice.OnceIn(2) ? old : "9", dice.Of([90, 300, 5000])));

    // A packed field is one word of a hundred thousand letters: five thousand of it would be a gigabyte of the test's own.
    private static string Many(string part, int times) => new StringBuilder().Insert(0, part, Math.Min(times, MostLetters / Math.Max(1, part.Length) + 1)).ToString();

    private static string Lines(string text, Action<List<string>> change)
    {
        List<string> lines = [.. text.Split('\n')];
        change(lines);
        return string.Join('\n', lines);
    }

    private static string Replaced(Dice dice, string text, Regex what, Func<string, string> with)
    {
        MatchCollection found = what.Matches(text);
        if (found.Count == 0)
        {
            return text;
        }

        Match chosen = found[dice.Below(found.Count)];
        return string.Concat(text.AsSpan(0, chosen.Index), with(chosen.Value), text.AsSpan(chosen.Index + chosen.Length));
    }

    [GeneratedRegex("[A-Za-z0-9_.+/%-]+", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Tokens();

    [GeneratedRegex("[0-9]+([.][0-9]+)?", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Digits();

    [GeneratedRegex("(?<=[0-9] ?)(mm|m|kg/m3|kg|%|degC|K|s|min|h|d|yr|kPa|mL/s|mL|L/s|L|m2/s|deg|layers?|/kg|/L)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex UnitsOfMeasure();

    [GeneratedRegex("\"?[a-z_0-9]+\"?(?= ?:)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Keys();

    [GeneratedRegex("[^A-Za-z0-9]", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Signs();
}
