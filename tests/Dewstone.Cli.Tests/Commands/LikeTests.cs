using System.Globalization;

namespace Dewstone.Cli.Tests.Commands;

/// <summary><c>--like</c>: a small edit makes a small difference.</summary>
public sealed class LikeTests
{
    // Long enough for positions more than three pitches from the tunnel that changes.
    private static readonly string Long = SmallYard.Unit
        .Replace("box: [250 mm, 200 mm, 150 mm]", "box: [450 mm, 150 mm, 150 mm]")
        .Replace("at: {x: 125 mm, z: 75 mm}", "at: {x: 100 mm, z: 75 mm}");

    [Fact]
    public async Task Tunnel_wider_by_a_millimetre_moves_no_dose_beyond_three_pitches_by_more_than_two_steps()
    {
        using SmallYard yard = new();
        yard.Write("small.unit.yaml", Long);
        await Compile(yard, "first");
        yard.Write("small.unit.yaml", Long.Replace("diameter: 60 mm", "diameter: 61 mm"));
        await Compile(yard, "second", "--like", yard.In("first", "small.job"));

        Dictionary<(string X, string Y, string Z), int> before = Steps(yard, "first"), after = Steps(yard, "second");
        int far = 0, moved = 0;
        foreach ((string X, string Y, string Z) at in before.Keys.Union(after.Keys))
        {
            int change = Math.Abs(before.GetValueOrDefault(at) - after.GetValueOrDefault(at));
            moved += change > 0 ? 1 : 0;
            if (Beyond(at, before.Keys) > 150.0)
            {
                far++;
                Assert.True(change <= 2, $"{at} moved by {change} steps");
            }
        }

        Assert.True(far >= 20, $"{far} positions lie beyond three pitches");
        Assert.True(moved > 0, "no dose answered the change");
        string manifest = await File.ReadAllTextAsync(yard.In("second", "small.job", "manifest.json"));
        Assert.Equal(Line(await File.ReadAllTextAsync(yard.In("first", "small.job", "manifest.json")), "corner_m"), Line(manifest, "corner_m"));
    }

    [Fact]
    public async Task Unchanged_unit_keeps_its_doses_to_the_byte()
    {
        using SmallYard yard = new();
        await Compile(yard, "first");
        await Compile(yard, "second", "--like", yard.In("first", "small.job"));
        Assert.Equal(Doses(yard, "first"), Doses(yard, "second"));
    }

    [Fact]
    public async Task Job_that_is_not_there_is_held_or_was_changed_is_refused_and_nothing_written()
    {
        using SmallYard yard = new();
        await Refused(yard, "DW8109", "nowhere.job");

        await Compile(yard, "first");
        string table = yard.In("first", "small.job", "doses", "layer-003.csv");
        await File.WriteAllTextAsync(table, await File.ReadAllTextAsync(table) + "\n");
        await Refused(yard, "DW8110", "first", "small.job");

        yard.Write("strict.unit.yaml", SmallYard.Unit.Replace("max: 40 kg", "max: 5 kg"));
        await Words.Run("compile", yard.In("strict.unit.yaml"), "-o", yard.In("held"), "--cells", "4", "--quiet");
        await Refused(yard, "DW8109", "held", "strict.held.job");

        await Compile(yard, "third");
        yard.Write("small.printer.yaml", SmallYard.Printer.Replace("origin: [25 mm, 25 mm]", "origin: [30 mm, 25 mm]"));
        await Refused(yard, "DW8111", "third", "small.job");
    }

    [Fact]
    public async Task Several_units_cannot_all_be_like_one_job()
    {
        using SmallYard yard = new();
        Words.Answer answer = await Words.Run("check", yard.UnitFile, yard.UnitFile, "--like", "x.job");
        Assert.Equal(ExitCode.InputAtFault, answer.Code);
        Assert.Contains("--like", answer.Error, StringComparison.Ordinal);
    }

    private static async Task Compile(SmallYard yard, string folder, params string[] more)
    {
        Words.Answer answer = await Words.Run(["compile", yard.UnitFile, "-o", yard.In(folder), "--cells", "4", "--quiet", .. more]);
        Assert.True(answer.Code == ExitCode.Done, answer.Output);
    }

    private static async Task Refused(SmallYard yard, string code, params string[] job)
    {
        Words.Answer answer = await Words.Run("compile", yard.UnitFile, "-o", yard.In("out"), "--cells", "4", "--quiet", "--like", yard.In(job));
        Assert.Equal(ExitCode.InputAtFault, answer.Code);
        Assert.Contains($"error {code}: ", answer.Output, StringComparison.Ordinal);
        Assert.False(Directory.Exists(yard.In("out")));
    }

    private static string[] Doses(SmallYard yard, string folder) =>
        [.. Directory.EnumerateFiles(yard.In(folder, "small.job", "doses")).Order(StringComparer.Ordinal).SelectMany(File.ReadAllLines)];

    private static Dictionary<(string X, string Y, string Z), int> Steps(SmallYard yard, string folder) =>
        Doses(yard, folder).Select(row => row.Split(',')).Where(cells => cells[0] != "layer")
            .ToDictionary(cells => (cells[6], cells[7], cells[8]), cells => int.Parse(cells[10], CultureInfo.InvariantCulture));

    // Distance along x, mm, from the tunnel's wall to a tip; the unit's lower corner lies half a pitch below its first tip.
    private static double Beyond((string X, string Y, string Z) at, IEnumerable<(string X, string Y, string Z)> all)
    {
        double first = all.Min(a => double.Parse(a.X, CultureInfo.InvariantCulture));
        return double.Parse(at.X, CultureInfo.InvariantCulture) - (first - 25.0 + 100.0 + 30.5);
    }

    private static string Line(string json, string name) => json[json.IndexOf(name, StringComparison.Ordinal)..json.IndexOf(']', json.IndexOf(name, StringComparison.Ordinal))];
}
