namespace Dewstone.Jobs.Emission.Pictures.Drawing;

/// <summary>
/// Single-stroke letters, as on a drawing sheet, drawn for Dewstone. Each letter is a list of strokes, each stroke a chain of points,
/// each point two hexadecimal digits: x from the left, y from below. Descenders reach to y = 0, the baseline is y = 3, small letters
/// end at 9 and capitals at 12. A letter is as wide as its largest x.
/// </summary>
internal static class StrokeAlphabet
{
    /// <summary>Height of the baseline in letter units.</summary>
    public const int Baseline = 3;

    /// <summary>Height of a capital above the baseline in letter units.</summary>
    public const int CapitalHeight = 9;

    private static readonly Dictionary<char, string> Letters = new()
    {
        [' '] = "", ['!'] = "1c 16|14 13", ['"'] = "0c 0a|2c 2a", ['#'] = "13 2c|43 5c|06 66|09 69", ['$'] = "5a 4b 1b 0a 09 18 47 56 55 44 14 05|3d 32",
        ['%'] = "03 6c|1c 2b 1a 0b 1c|54 63 52 43 54", ['&'] = "63 1a 1b 2c 3c 4b 4a 07 05 23 33 67", ['\''] = "1c 1a",
        ['('] = "2d 0a 05 22", [')'] = "0d 2a 25 02", ['*'] = "05 4a|45 0a|23 2c", ['+'] = "06 66|33 39", [','] = "14 13 01", ['-'] = "06 46",
        ['.'] = "14 13", ['/'] = "02 5d", [':'] = "14 13|19 18", [';'] = "14 13 01|19 18", ['<'] = "59 06 53", ['='] = "05 55|08 58",
        ['>'] = "09 56 03", ['?'] = "0a 1c 4c 5a 59 27 26|24 23", ['@'] = "56 47 27 15 24 44 56 65 76 79 5b 2b 09 05 23 63",
        ['['] = "2d 0d 02 22", ['\\'] = "0d 52", [']'] = "0d 2d 22 02", ['^'] = "09 2c 49", ['_'] = "02 62", ['`'] = "0c 1a",
        ['{'] = "2d 1c 18 07 16 12 21", ['|'] = "1d 12", ['}'] = "0d 1c 18 27 16 12 01", ['~'] = "06 17 46 57",
        ['\u00b0'] = "1c 2c 3b 3a 29 19 0a 0b 1c", ['\u00d7'] = "04 59|09 54", ['\u2013'] = "06 66", ['\u00b2'] = "0b 1c 2b 07 27", ['\u00b3'] = "0c 2c 1a 29 27 07",
        ['0'] = "1c 4c 5a 55 43 13 05 0a 1c", ['1'] = "0a 3c 33", ['2'] = "0a 1c 4c 5b 59 03 53", ['3'] = "0b 1c 4c 5b 59 48 28|48 57 54 43 13 04",
        ['4'] = "43 4c 06 56", ['5'] = "5c 0c 08 48 57 54 43 13 04", ['6'] = "5b 4c 2c 09 05 13 43 54 57 48 18 06", ['7'] = "0c 5c 23",
        ['8'] = "18 09 0b 1c 4c 5b 59 48 18 07 04 13 43 54 57 48", ['9'] = "04 13 33 56 5a 4c 1c 0b 08 17 47 59",
        ['A'] = "03 3c 63|16 56", ['B'] = "48 08|08 0c 4c 5b 59 48 67 64 43 03 08", ['C'] = "6a 4c 2c 0a 05 23 43 65", ['D'] = "03 0c 3c 6a 65 33 03",
        ['E'] = "5c 0c 03 53|08 48", ['F'] = "5c 0c 03|08 48", ['G'] = "6a 4c 2c 0a 05 23 43 65 68 38", ['H'] = "03 0c|63 6c|08 68", ['I'] = "13 1c",
        ['J'] = "4c 45 33 13 05", ['K'] = "03 0c|6c 06|28 63", ['L'] = "0c 03 53", ['M'] = "03 0c 36 6c 63", ['N'] = "03 0c 63 6c",
        ['O'] = "2c 4c 6a 65 43 23 05 0a 2c", ['P'] = "03 0c 4c 6b 68 47 07", ['Q'] = "2c 4c 6a 65 43 23 05 0a 2c|35 62", ['R'] = "03 0c 4c 6b 68 47 07|37 63",
        ['S'] = "5b 4c 1c 0b 09 18 48 57 54 43 13 04", ['T'] = "0c 6c|3c 33", ['U'] = "0c 05 23 43 65 6c", ['V'] = "0c 33 6c", ['W'] = "0c 23 4c 63 8c",
        ['X'] = "03 6c|0c 63", ['Y'] = "0c 38 6c|38 33", ['Z'] = "0c 6c 03 63",
        ['a'] = "59 53|57 39 29 07 05 23 33 55", ['b'] = "0c 03|07 29 39 57 55 33 23 05", ['c'] = "58 39 29 07 05 23 33 54", ['d'] = "5c 53|57 39 29 07 05 23 33 55",
        ['e'] = "06 56 57 39 29 07 05 23 33 54", ['f'] = "4c 3c 2a 23|09 49", ['g'] = "59 52 30 20 01|57 39 29 07 05 23 33 55", ['h'] = "0c 03|07 29 39 57 53",
        ['i'] = "13 19|1b 1c", ['j'] = "29 21 10 00|2b 2c", ['k'] = "0c 03|49 05|17 43", ['l'] = "1c 14 23 33", ['m'] = "03 09|07 19 29 47 43|47 59 69 87 83",
        ['n'] = "03 09|07 29 39 57 53", ['o'] = "29 39 57 55 33 23 05 07 29", ['p'] = "09 00|07 29 39 57 55 33 23 05", ['q'] = "59 50|57 39 29 07 05 23 33 55",
        ['r'] = "03 09|07 29 39", ['s'] = "48 39 19 08 07 16 36 45 44 33 13 04", ['t'] = "2c 24 33 43|09 49", ['u'] = "09 05 23 33 55|59 53",
        ['v'] = "09 33 69", ['w'] = "09 23 49 63 89", ['x'] = "09 53|03 59", ['y'] = "09 33|69 21 10 00", ['z'] = "09 59 03 53",
    };

    // Letters with accents and the plain ones they are drawn as. A table, because without culture data the library takes no accents off.
    private const string Accented = "\u00c0\u00c1\u00c2\u00c3\u00c4\u00c5\u00c7\u00c8\u00c9\u00ca\u00cb\u00cc\u00cd\u00ce\u00cf\u00d1\u00d2\u00d3\u00d4\u00d5\u00d6\u00d8\u00d9\u00da\u00db\u00dc\u00dd"
        + "\u00e0\u00e1\u00e2\u00e3\u00e4\u00e5\u00e7\u00e8\u00e9\u00ea\u00eb\u00ec\u00ed\u00ee\u00ef\u00f1\u00f2\u00f3\u00f4\u00f5\u00f6\u00f8\u00f9\u00fa\u00fb\u00fc\u00fd\u00ff"
        + "\u0107\u010d\u0119\u011b\u0131\u0142\u0144\u0148\u0151\u0159\u015b\u0161\u016f\u0171\u017a\u017c\u017e\u2019\u2014";

    private const string Unaccented = "AAAAAACEEEEIIIINOOOOOOUUUUY" + "aaaaaaceeeeiiiinoooooouuuuyy" + "cceeilnnorssuuzzz'\u2013";

    private static readonly string Unknown = "03 0c 5c 53 03";

    /// <summary>Strokes of a letter in letter units; a box for letters the alphabet does not hold.</summary>
    /// <param name="letter">The letter.</param>
    /// <returns>Chains of points, y upwards.</returns>
    public static (int X, int Y)[][] Strokes(char letter)
    {
        string code = Letters.GetValueOrDefault(letter, Unknown);
        return code.Length == 0
            ? []
            : [.. code.Split('|').Select(stroke => stroke.Split(' ').Select(point => (Digit(point[0]), Digit(point[1]))).ToArray())];
    }

    /// <summary>Width of a letter in letter units, without the space after it.</summary>
    /// <param name="letter">The letter.</param>
    /// <returns>The width.</returns>
    public static int Width(char letter) => letter switch
    {
        ' ' => 3,
        >= '0' and <= '9' => 5,
        _ => Strokes(letter).SelectMany(stroke => stroke).Max(point => point.X),
    };

    /// <summary>A letter without its accent.</summary>
    /// <param name="letter">The letter.</param>
    /// <returns>The plain letter; the letter itself when it has no accent we know.</returns>
    public static char Plain(char letter) => !char.IsAscii(letter) && Accented.IndexOf(letter, StringComparison.Ordinal) is >= 0 and int place ? Unaccented[place] : letter;

    /// <summary>All letters the alphabet holds.</summary>
    public static IEnumerable<char> All => Letters.Keys;

    private static int Digit(char c) => c <= '9' ? c - '0' : c - 'a' + 10;
}
