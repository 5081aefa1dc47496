using System.Text.Json.Nodes;

namespace Dewstone.Cli.Tests.Commands;

/// <summary>Run logs with planted faults: each is named with its place, and the verdict follows the rules.</summary>
public sealed class SurveyRunTests(SurveyYard yard) : IClassFixture<SurveyYard>
{
    [Fact]
    public async Task Faultless_log_is_released_without_a_finding()
    {
        Words.Answer answer = await Survey(yard.Log);
        Assert.Equal(ExitCode.Done, answer.Code);
        Assert.DoesNotContain("DW", answer.Output, StringComparison.Ordinal);
        Assert.EndsWith("Small step: release\n", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Log_with_the_needles_own_spread_is_released_without_a_finding()
    {
        Random draws = new(5);
        Words.Answer answer = await Survey(yard.Log.Select(r => r with { Millilitres = r.Millilitres * (1.0 + 0.02 * Normal(draws)) }));
        Assert.True(answer.Code == ExitCode.Done, answer.Output);
        Assert.DoesNotContain("DW", answer.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("needle stuck from layer 7", "DW3065", "needle 4,2 is stuck from layer 7, station 2 on", "scrap or release")]
    [InlineData("board stuck from layer 6", "DW3066", "board B4 with", "scrap")]
    [InlineData("board drifts", "DW3068", "board B2 with", "scrap or release")]
    [InlineData("needle drifts", "DW3067", "needle 5,2 drifts: ", "release")]
    [InlineData("stations swapped in layer 4", "DW3062", "layer 4: stations 1 and 2 were swapped", "hold or scrap")]
    [InlineData("layer 5 repeated", "DW3061", "layer 5 was run twice", "hold or scrap")]
    [InlineData("station repeated", "DW3061", "layer 5, station 2 was run twice", "hold or scrap")]
    [InlineData("stop in mid-layer", "DW3060", "the print stopped in layer 6 at station 1", "hold")]
    [InlineData("stop within a station", "DW3060", "the print stopped in layer 6 at station 2", "hold")]
    [InlineData("layer 2 got layer 9", "DW3063", "layer 2 got the doses of layer 9", "hold or scrap")]
    [InlineData("station skipped", "DW3064", "layer 6, station 2 got no water", "hold or scrap")]
    [InlineData("dose missing", "DW3069", "layer 4, station 1, needle 5,4", "release")]
    [InlineData("dose short", "DW3070", "layer 4, station 1, needle 5,4", "release")]
    [InlineData("dose large", "DW3071", "layer 4, station 1, needle 5,4", "release")]
    [InlineData("dose twice", "DW3072", "layer 4, station 1, needle 5,4", "release")]
    [InlineData("dose unplanned", "DW3073", "layer 3, station 1, needle 6,4", "scrap")]
    [InlineData("dose far off", "DW3074", "layer 4, station 1, needle 1,1", "hold")]
    [InlineData("layers out of order", "DW3075", "layer 5, station 1 was watered after layer 6, station 2", "hold")]
    [InlineData("clock goes back", "DW3076", "layer 6, station 1, needle", "hold")]
    [InlineData("pause", "DW3077", "layer 6 got its first dose", "release")]
    [InlineData("cold joint", "DW3078", "layer 6 got its first dose", "hold")]
    [InlineData("slow needle", "DW3079", "needle 5,4 ran at 2.00 mL/s", "release")]
    [InlineData("fault marked", "DW3080", "needle 5,4: 1 doses marked faulty", "release")]
    public async Task Planted_fault_is_named_with_its_place_and_judged(string fault, string code, string place, string verdict)
    {
        Words.Answer answer = await Survey(Plant(fault));
        string[] lines = answer.Output.Split('\n');
        Assert.True(lines.Any(l => l.Contains($" {code}: ", StringComparison.Ordinal) && l.Contains(place, StringComparison.Ordinal)), answer.Output + answer.Error);
        string[] others = [.. lines.Where(l => l.Contains(": error DW30", StringComparison.Ordinal) || l.Contains(": warning DW30", StringComparison.Ordinal)).Where(l => l.Contains(".csv:", StringComparison.Ordinal) && !l.Contains(code, StringComparison.Ordinal))];
        Assert.True(others.Length == 0, $"{fault} also gives:\n{string.Join('\n', others)}");
        string said = lines[^2].Split(": ")[^1].ToLowerInvariant();
        Assert.True(verdict.Split(" or ").Contains(said), $"{fault}: {said} instead of {verdict}\n{answer.Output}");
        Assert.Equal(said == "release" ? ExitCode.Done : ExitCode.No, answer.Code);
    }

    private IEnumerable<LogRow> Plant(string fault)
    {
        List<LogRow> log = [.. yard.Log];
        bool Is(LogRow r, int layer, int station) => r.Layer == layer && r.Station == station;
        bool IsOne(LogRow r) => r is { Layer: 4, Station: 1, Column: 5, Row: 4 };
        LogRow Times(LogRow r, double factor) => r with { Millilitres = r.Millilitres * factor };
        return fault switch
        {
            "needle stuck from layer 7" => log.Where(r => !(r is { Layer: >= 7, Column: 4, Row: 2 })),
            "board stuck from layer 6" => log.Select(r => r is { Layer: >= 6, Row: 4 } ? Times(r, 0.0) : r),
            "board drifts" => log.Select(r => r.Row == 2 ? Times(r, 1.0 - 0.02 * (r.Layer - 2)) : r),
            "needle drifts" => log.Select(r => r is { Column: 5, Row: 2 } ? Times(r, 1.0 - 0.03 * (r.Layer - 2)) : r),
            "stations swapped in layer 4" => log.Select(r => r.Layer == 4 ? r with { Station = 3 - r.Station, Started = yard.Log.First(o => Is(o, 4, 3 - r.Station)).Started } : r).OrderBy(r => (r.Layer, r.Station)),
            "layer 5 repeated" => [.. log.Where(r => r.Layer <= 5), .. log.Where(r => r.Layer == 5).Select(r => r with { Started = r.Started + 60.0 }), .. log.Where(r => r.Layer > 5).Select(r => r with { Started = r.Started + 90.0 })],
            "station repeated" => [.. log.Where(r => r.Layer <= 5), .. log.Where(r => Is(r, 5, 2)).Select(r => r with { Started = r.Started + 30.0 }), .. log.Where(r => r.Layer > 5).Select(r => r with { Started = r.Started + 60.0 })],
            "stop in mid-layer" => log.Where(r => r.Layer < 6 || Is(r, 6, 1)),
            "stop within a station" => [.. log.Where(r => r.Layer < 6 || Is(r, 6, 1)), .. log.Where(r => Is(r, 6, 2)).Take(4)],
            "layer 2 got layer 9" => [.. log.Where(r => r.Layer == 9).Select(r => r with { Layer = 2, Started = log.First(o => Is(o, 2, r.Station)).Started }), .. log.Where(r => r.Layer != 2)],
            "station skipped" => log.Where(r => !Is(r, 6, 2)),
            "dose missing" => log.Where(r => !IsOne(r)),
            "dose short" => log.Select(r => IsOne(r) ? Times(r, 0.7) : r),
            "dose large" => log.Select(r => IsOne(r) ? Times(r, 1.3) : r),
            "dose twice" => log.SelectMany(r => IsOne(r) ? [r, r] : new[] { r }),
            "dose unplanned" => Unplanned(log),
            "dose far off" => log.SelectMany(r => IsOne(r) ? [r with { Column = 1, Row = 1, Millilitres = 8.0 }, r] : new[] { r }),
            "layers out of order" => [.. log.Where(r => r.Layer < 5), .. Late(log, 6, 5), .. Late(log, 5, 6), .. log.Where(r => r.Layer > 6)],
            "clock goes back" => log.Select(r => r with { Started = r.Started - (r.Layer >= 6 ? 3600.0 : 0.0) }),
            "pause" => log.Select(r => r with { Started = r.Started + (r.Layer >= 6 ? 240.0 : 0.0) }),
            "cold joint" => log.Select(r => r with { Started = r.Started + (r.Layer >= 6 ? 1500.0 : 0.0) }),
            "slow needle" => log.Select(r => r is { Column: 5, Row: 4 } ? r with { Seconds = r.Millilitres / 2.0 } : r),
            "fault marked" => log.Select(r => IsOne(r) ? r with { State = "fault" } : r),
            _ => throw new ArgumentException("no such fault", nameof(fault)),
        };
    }

    // The layer run at the time of another.
    private static IEnumerable<LogRow> Late(List<LogRow> log, int layer, int at) =>
        log.Where(r => r.Layer == layer).Select(r => r with { Started = log.First(o => o.Layer == at && o.Station == r.Station).Started });

    // Water in the tunnel, in the layer where it is widest.
    private static IEnumerable<LogRow> Unplanned(List<LogRow> log)
    {
        LogRow beside = log.First(r => r.Layer == 3 && r.Row == 4);
        Assert.DoesNotContain(log, r => r.Layer == beside.Layer && r.Station == beside.Station && r is { Column: 6, Row: 4 });
        return log.SelectMany(r => r == beside ? [r with { Column = 6, Millilitres = 3.0 }, r] : new[] { r });
    }

    [Fact]
    public async Task Log_without_times_and_states_is_judged_with_the_times_planned()
    {
        string log = yard.Yard.Write("short.csv", "row,column,layer,station,delivered_ml\n" + string.Concat(yard.Log.Select(r => FormattableString.Invariant($"{r.Row},{r.Column},{r.Layer},{r.Station},{r.Millilitres}\n"))));
        Words.Answer answer = await Words.Run("survey", yard.Job, "--run-log", log, "--quiet");
        Assert.True(answer.Code == ExitCode.Done, answer.Output + answer.Error);
        Assert.Contains("as planned: the log has none", answer.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("DW", answer.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", ":1:1: error DW8340: the file is empty")]
    [InlineData("layer;station;column;row;delivered_ml\n", ":1:1: error DW8340: the columns are not separated by commas")]
    [InlineData("layer,station,column,row\n", ":1:1: error DW8340: there is no column `delivered_ml`")]
    [InlineData("layer,station,column,row,delivered\n", ":1:26: error DW8340: `delivered` does not say its unit")]
    [InlineData("layer,station,column,row,delivered_oz\n", ":1:26: error DW8340: `delivered_oz` is in no unit that is read")]
    [InlineData("layer,station,column,row,delivered_ml,row\n", ":1:39: error DW8340: `row` stands there twice")]
    [InlineData("layer,station,column,row,delivered_ml\n", ":1:1: error DW8343")]
    [InlineData("layer,station,column,row,delivered_ml\n2,1,4,4\n", ":2:1: error DW8342")]
    [InlineData("layer,station,column,row,delivered_ml\n2,1,4,4,7,5\n", ":2:1: error DW8342")]
    [InlineData("layer,station,column,row,delivered_ml\n2,1,4,,7.5\n", ":2:7: error DW8341: `row` is empty")]
    [InlineData("layer,station,column,row,delivered_ml\n2,1,4,4,7..5\n", ":2:9: error DW8341")]
    [InlineData("layer,station,column,row,delivered_ml\n2,1.5,4,4,7.5\n", ":2:3: error DW8341")]
    [InlineData("layer,station,column,row,delivered_ml\n2,1,4,4,-1\n", ":2:9: error DW8341")]
    [InlineData("layer,station,column,row,delivered_ml\n2,1,4,4,7.5 mL\n", ":2:9: error DW8341: `7.5 mL` is no plain number")]
    [InlineData("layer,station,column,row,delivered_ml,state\n2,1,4,4,7.5,fine\n", ":2:13: error DW8341: `fine` will not do as `state`")]
    [InlineData("layer,station,column,row,delivered_ml\n2,3,4,4,7.5\n", ":2:1: error DW8344: layer 2, station 3, needle 4,4: the printer has no such")]
    [InlineData("layer,station,column,row,delivered_ml\n12,1,4,4,7.5\n", ":2:1: error DW8344: layer 12, station 1, needle 4,4: the job has 9 layers")]
    public async Task Log_at_fault_is_refused_with_its_place(string text, string place)
    {
        string log = yard.Yard.Write("bad.csv", text);
        Words.Answer answer = await Words.Run("survey", yard.Job, "--run-log", log, "--quiet");
        Assert.Equal(ExitCode.InputAtFault, answer.Code);
        Assert.Contains("bad.csv" + place, answer.Output, StringComparison.Ordinal);
        Assert.Single(answer.Output.Split('\n'), line => line.Contains(": error ", StringComparison.Ordinal));
        Assert.EndsWith("tall.job: not surveyed\n", answer.Output, StringComparison.Ordinal);
        Assert.Equal(text, await File.ReadAllTextAsync(log));
    }

    [Fact]
    public async Task Column_with_gaps_is_not_used_and_that_is_said()
    {
        string log = yard.Write(yard.Log);
        string[] lines = await File.ReadAllLinesAsync(log);
        lines[3] = lines[3][..(lines[3].LastIndexOf(',') + 1)];
        await File.WriteAllLinesAsync(log, lines);
        Words.Answer answer = await Words.Run("survey", yard.Job, "--run-log", log);
        Assert.Equal(ExitCode.Done, answer.Code);
        Assert.Contains(":4:1: warning DW8345: `started_s` is empty in 1 of ", answer.Output, StringComparison.Ordinal);
        Assert.Contains("as planned: the log has none", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Answer_as_json_fits_its_schema_and_the_job_is_untouched()
    {
        SortedDictionary<string, string> before = SmallYard.Hashes(yard.Job);
        string log = yard.Write(Plant("board stuck from layer 6"));
        Words.Answer answer = await Words.Run("survey", yard.Job, "--run-log", log, "--json", "--quiet");
        Repository.AssertValid("survey.schema.json", answer.Output);
        JsonNode document = JsonNode.Parse(answer.Output)!;
        Assert.Contains(document["findings"]!.AsArray(), f => (string)f!["code"]! == "DW3081" && ((string)f["message"]!).Contains("it was met as planned", StringComparison.Ordinal));
        Assert.Equal(("scrap", 1), ((string)document["verdict"]!, (int)document["exit_code"]!));
        Assert.True((double)document["run"]!["hardened_m3"]!["as_run"]! < (double)document["run"]!["hardened_m3"]!["planned"]!);
        Assert.Equal(before, SmallYard.Hashes(yard.Job));
        Words.Answer bad = await Words.Run("survey", yard.Yard.In("none.job"), "--run-log", log, "--json", "--quiet");
        Repository.AssertValid("survey.schema.json", bad.Output);
        Assert.Equal(ExitCode.InputAtFault, bad.Code);
    }

    [Fact]
    public async Task Rest_of_a_stopped_print_is_held_against_the_log_of_the_rest_or_of_all()
    {
        string output = yard.Yard.In("rest");
        Words.Answer resumed = await Words.Run("resume", yard.Job, "--after", "4", "--station", "1", "--pause", "1 min", "-o", output, "--quiet");
        Assert.True(resumed.Code == ExitCode.Done, resumed.Output + resumed.Error);
        string rest = Assert.Single(Directory.GetDirectories(output));
        foreach (IEnumerable<LogRow> rows in new[] { yard.Log.Where(r => r.Layer > 5 || r is { Layer: 5, Station: 2 }), yard.Log })
        {
            Words.Answer answer = await Words.Run("survey", rest, "--run-log", yard.Write(rows), "--quiet");
            Assert.True(answer.Code == ExitCode.Done, answer.Output + answer.Error);
            Assert.DoesNotContain("DW", answer.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Nothing_measured_is_a_fault_of_usage()
    {
        Words.Answer answer = await Words.Run("survey", yard.Job);
        Assert.Equal(ExitCode.InputAtFault, answer.Code);
        Assert.Contains("needs something measured", answer.Error, StringComparison.Ordinal);
    }

    private async Task<Words.Answer> Survey(IEnumerable<LogRow> rows) => await Words.Run("survey", yard.Job, "--run-log", yard.Write(rows), "--quiet");

    // Box and Muller, 1958; from memory.
    private static double Normal(Random draws) => Math.Sqrt(-2.0 * Math.Log(1.0 - draws.NextDouble())) * Math.Cos(2.0 * Math.PI * draws.NextDouble());
}
