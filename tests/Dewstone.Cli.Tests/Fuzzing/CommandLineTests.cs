namespace Dewstone.Cli.Tests.Fuzzing;

/// <summary>Words in any order: commands with options of others, without what they need, with numbers, names and paths that will not do.</summary>
[Collection(nameof(FuzzAlone))]
public sealed class CommandLineTests(ITestOutputHelper output)
{
    private const string Unit = "../yard/fuzz.unit.yaml";

    // Sound commands that are cheap; those that would compute name something that is not there.
    private static readonly string[] Commands =
    [
        $"check {Unit} --drawing --cells 4", $"check {Unit} ../yard/plain.unit.yaml --drawing --cells 4 --threads 2 --quiet", "check ../yard --drawing --cells 4",
        $"check {Unit} --drawing --cells 4 --sarif out/findings.sarif --accept DW3012=agreed", $"compile {Unit} -o out --cells 4 --mix missing.mix.yaml", $"check {Unit} --drawing --cells 4 --site ../yard/fuzz.site.yaml --tonight ../yard/fuzz.tonight.yaml",
        "explain DW1001", "explain", "schema unit", "new mix out/new.mix.yaml", "new unit out/x.unit.yaml", "limits --mix ../yard/fuzz.mix.yaml --printer missing.printer.yaml --water-cement 0.55",
        "verify ../yard/folder --approved ../yard/approved.txt", "diff ../yard/folder ../yard/none --format markdown --tolerance-dose 0.1", "survey ../yard/folder --weights ../yard/w.csv -o out",
        "resume ../yard/folder --after 1 --station 1 --pause 5min -o out", "calibrate needles ../yard/data-needles.csv -o out/new.needles.csv", "calibrate mix ../yard/data-density.csv --mix ../yard/fuzz.mix.yaml -o out/new.mix.yaml --exponent 4",
        "order status ../yard/fuzz.order.yaml -o out --of 3", "order gather ../yard/fuzz.order.yaml -o out", "order compile ../yard/none.order.yaml -o out --task 1 --of 2 --continue", "order plan ../yard/none.order.yaml -o out",
    ];

    private static readonly string[] More =
    [
        "--json", "--quiet", "--help", "--version", "-o", "--output", "--cells", "--threads", "--root", "..", "--mix", "--trials", "--no-correction", "--like", "--field", "--units", "us", "--", "-", "--=", "-x", "@file", "/?",
        "--cells=4", "--threads=0", "--root=..", "[suggest]", "[suggest:3]", "[diagram]", "[directive]", "", " ", "--pause", "1 h", "-1", "--accept", "DW3012=", "=", "--exponent", "--task-from", "HOME", "--format", "text",
    ];

    [Fact]
    public Task One_thousand_four_hundred_end_well() => Run((1400, 0));

    [Fact]
    [Trait("Category", "Soak")]
    public Task Very_many_end_well() => Run(Soak.Cases(100_000), Soak.Seed);

    private static FuzzCase Make(Dice dice, FuzzYard yard)
    {
        List<string> words = [.. dice.Of(Commands).Split(' ')];
        for (int changes = dice.Of([0, 1, 1, 2, 3]); changes > 0; changes--)
        {
            Change(dice, words);
        }

        Shorten(words, "check", "--drawing");
        Shorten(words, "compile", "--mix", "missing.mix.yaml");

        // Where a word names a place, the program may write there: it was asked to.
        string work = yard.In("work");
        return new FuzzCase("words", [.. words])
        {
            MayWrite = [work, .. words.Select(word => word[(word.IndexOf('=', StringComparison.Ordinal) + 1)..]).Where(word => word.Length > 0 && !word.Contains('\0')).Select(word => Path.GetFullPath(word, work))],
        };
    }

    // What would compute for seconds is stopped before.
    private static void Shorten(List<string> words, string command, params string[] by)
    {
        if (words.Contains(command) && !words.Contains(by[0]))
        {
            words.InsertRange(words.IndexOf(command) + 1, by);
        }
    }

    private static void Change(Dice dice, List<string> words)
    {
        int at = dice.Below(words.Count + 1);
        string any = dice.Below(4) switch
        {
            0 => dice.Of(Nasty.Words).Replace("\0", "", StringComparison.Ordinal),
            1 => dice.Of(Nasty.Numbers),
            2 => Local(dice.Of(Nasty.Paths)),
            _ => dice.Of(More),
        };
        switch (at < words.Count ? dice.Below(6) : 0)
        {
            case 0: words.Insert(at, any); break;
            case 1: words[at] = any; break;
            case 2: words.RemoveAt(at); break;
            case 3: words.Insert(dice.Below(words.Count), words[at]); break;
            case 4: words[at] += any.StartsWith('/') ? "" : any; break;
            default: words[at] = new string(dice.Of(['x', '.', '9', '-']), dice.Of([1, 200, 256, 5000])); break;
        }
    }

    // What leads to the top of the disk or to a device is not written to by a test; what leads out of the yard only as far as is seen.
    private static string Local(string path) => path.StartsWith('/') || path == "pipe" ? "none" : path;

    private async Task Run((uint Count, uint First) cases, ulong seed = 4)
    {
        using FuzzYard yard = new();
        FuzzFiles.Write(yard);
        yard.Settle();
        FuzzRun run = new(yard);
        IReadOnlyList<string> failures = await run.All(cases.Count, cases.First, seed, dice => Make(dice, yard));
        output.WriteLine($"{cases.Count} cases, seed {seed}; {run.Ends}");
        Assert.True(failures.Count == 0, string.Join('\n', failures));
    }
}
