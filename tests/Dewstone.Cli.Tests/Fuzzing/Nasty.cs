namespace Dewstone.Cli.Tests.Fuzzing;

/// <summary>Texts that have broken readers of all sorts: numbers at the edge of a type, markup, escapes, paths that lead away.</summary>
internal static class Nasty
{
    public static readonly string[] Numbers =
    [
        "0", "-0", "-1", "1", "2", "3", "1e-320", "1e-9", "1e300", "1e308", "1e400", "-1e400", "NaN", "nan", "Infinity", "-inf", ".inf", ".nan", "2147483647", "2147483648",
        "-2147483648", "-2147483649", "4294967296", "9007199254740993", "99999999999999999999", "0x10", "010", "1_000", "1,5", "1 5", "\u0663", "\u00bd", "1e", "e5", "+5",
        "--5", "5-", "0.00000001", "3.4e38", "1e39", "65536", "100000", "1000", "50", "0.5", "1:30", "1/2", "12345678901234567890123456789.5",
    ];

    public static readonly string[] Units = ["mm", "m", "km", "um", "kg", "t", "%", "degC", "K", "s", "d", "yr", "kPa", "/kg", "L", "mL", "mL/s", "m2/s", "kg/m3", "deg", "layers", "pitch", "\u00b5m", "m\u00b2", "MM"];

    public static readonly string[] Words =
    [
        "null", "~", "true", "yes", "[]", "{}", "\"\"", "''", "|", ">", "!!binary x", "!x", "&a", "*a", "<<: *a", "? ", "---", "...", "%YAML 1.1", "@", "`", "#", "\0", "\u0007",
        "\u001b[2J", "\u202e", "\u2028", "\u0085", "\ud83d\ude00", "\\ud800", "\"\\ud800\"", "\"\\u0000\"", "\"\\x\"", "%s%n", "{0}", "${HOME}", "$(id)", ";", "\"", "'", "\\", ",,,,", "[[[[", "}}}}",
        "=cmd()", "<script>", "\u0130", "ss\u00df", "x\u0301\u0301\u0301", "name", "kind", "unit", "DW1001", "\ufeff", "\ufffd", "\r", "\n\n", "\t", " ",
    ];

    /// <summary>None of them leads further up than three folders, so that a write that goes astray is seen.</summary>
    public static readonly string[] Paths =
    [
        "..", ".", "../..", "../../..", "../outside.csv", "../../outside.csv", "/etc/passwd", "/dev/zero", "/dev/null", "/proc/self/environ", "/proc/self/mem", "pipe", "loop", "away", "folder",
        "fuzz.unit.yaml", "fuzz.mix.yaml", "fuzz.printer.yaml", "out", "./", "a\\b", "C:\\x", "~", "x/../../y", "fuzz.job", "fuzz.job/job.json", "doses", "doses/layer-002.csv", "manifest.json",
    ];
}
