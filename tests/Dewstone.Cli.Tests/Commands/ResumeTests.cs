using System.Globalization;
using System.Text.Json.Nodes;

namespace Dewstone.Cli.Tests.Commands;

/// <summary>A small job of four layers, the upper three with water, from two stations, stopped at every place.</summary>
public sealed class ResumeTests : IClassFixture<ResumeTests.Stopped>
{
    private const string NeedleHeader = "column,row,board,channel,state,gain,offset_ml,flow_ml_s,repeatability_percent\n";
    private const string LogHeader = "layer,station,column,row,delivered_ml\n";

    private readonly Stopped stopped;

    public ResumeTests(Stopped stopped) => this.stopped = stopped;

    [Theory]
    [InlineData(0, 1)]
    [InlineData(0, 2)]
    [InlineData(1, 0)]
    [InlineData(1, 1)]
    [InlineData(1, 2)]
    [InlineData(2, 0)]
    [InlineData(2, 1)]
    [InlineData(2, 2)]
    [InlineData(3, 0)]
    [InlineData(3, 1)]
    public async Task No_pause_leaves_every_remaining_byte_as_it_was_and_the_rest_verifies(int after, int station)
    {
        string rest = await stopped.Resume(ExitCode.Done, after, station, "0 s");
        bool IsDone(string row) => row.Split(',') is var cells && (int.Parse(cells[0]) <= after || (int.Parse(cells[0]) == after + 1 && int.Parse(cells[1]) <= station));
        for (int layer = 1; layer <= 4; layer++)
        {
            string[] all = Rows(stopped.Job, "doses", layer);
            Assert.Equal(all.Where(row => !IsDone(row)), Rows(rest, "doses", layer));
            Assert.Equal(all.Where(IsDone), Rows(rest, "delivered", layer));
            if (all.Length > 0 && !all.Any(IsDone))
            {
                Assert.Equal(File.ReadAllBytes(Table(stopped.Job, "doses", layer)), File.ReadAllBytes(Table(rest, "doses", layer)));
            }
        }

        // The sequence is the end of the old one, its steps numbered anew; the machine is where the first of them begins.
        string[] steps = Steps(stopped.Job), left = Steps(rest);
        Assert.Equal(steps[^left.Length..], left);
        int given = steps[..^left.Length].Count(step => step.Contains(",dose,", StringComparison.Ordinal));
        Assert.Equal(Enumerable.Range(1, 4).SelectMany(layer => Rows(rest, "delivered", layer)).Select(row => string.Join(',', row.Split(',')[..2])).Distinct().Count(), given);
        Assert.Equal(Json(stopped.Job, "job.json")["timeline"]!.ToJsonString(), Json(rest, "job.json")["timeline"]!.ToJsonString());
        Assert.Equal(File.ReadAllBytes(Path.Combine(stopped.Job, "predicted.vti")), File.ReadAllBytes(Path.Combine(rest, "predicted.vti")));
        Words.Answer verified = await Words.Run("verify", rest, "--quiet");
        Assert.True(verified.Code == ExitCode.Done, verified.Output);
        AssertWaterAddsUp(rest);
    }

    [Fact]
    public async Task Long_pause_leaves_a_cold_joint_that_a_longer_one_does_not_mend()
    {
        string? solid = null;
        foreach (string pause in (string[])["12 min", "25 min", "3 h"])
        {
            string rest = await stopped.Resume(ExitCode.Done, 2, 0, pause);
            Assert.Contains("warning DW3040: cold joint between layer 2 and 3, ", stopped.Last.Output, StringComparison.Ordinal);
            Assert.Contains("against a window of 10 min; strength across it is not computed", stopped.Last.Output, StringComparison.Ordinal);
            AssertWaterAddsUp(rest);
            string now = Convert.ToHexString(await File.ReadAllBytesAsync(Path.Combine(rest, "predicted.vti")));
            Assert.Equal(solid ?? now, now);
            solid = now;
            Assert.Equal(ExitCode.Done, (await Words.Run("verify", rest, "--quiet")).Code);
        }

        await stopped.Resume(ExitCode.Done, 2, 0, "1 min");
        Assert.DoesNotContain("DW3040", stopped.Last.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Answer_as_json_fits_its_schema_and_the_rest_refers_to_the_job()
    {
        string rest = await stopped.Resume(ExitCode.Done, 2, 0, "25 min", "--json");
        Repository.AssertValid("resume.schema.json", stopped.Last.Output);
        JsonNode answer = JsonNode.Parse(stopped.Last.Output)!;
        Assert.Equal(("go_on", rest), ((string)answer["answer"]!, (string)answer["folder"]!));
        JsonNode from = Json(rest, "manifest.json")["resumed_from"]!;
        Assert.Equal((string)Json(stopped.Job, "manifest.json")["job_fingerprint"]!, (string)from["job_fingerprint"]!);
        Assert.Equal((2, 0, 1500.0), ((int)from["after_layer"]!, (int)from["station"]!, (double)from["pause_s"]!));
        Repository.AssertValid("manifest.schema.json", await File.ReadAllTextAsync(Path.Combine(rest, "manifest.json")));
        Repository.AssertValid("job.schema.json", await File.ReadAllTextAsync(Path.Combine(rest, "job.json")));
        Repository.AssertValid("estimate.schema.json", await File.ReadAllTextAsync(Path.Combine(rest, "estimate.json")));
    }

    [Fact]
    public async Task Needle_that_died_gives_nothing_more_and_the_rest_is_found_anew()
    {
        string[] dead = Rows(stopped.Job, "doses", 3)[6].Split(',');
        string needles = stopped.Yard.Write("dead.csv", $"{NeedleHeader}{dead[2]},{dead[3]},,,blocked,1,0,,\n");
        string rest = await stopped.Resume(ExitCode.Done, 2, 0, "0 s", "--needles", needles);
        Assert.Contains("doses            found anew in ", stopped.Last.Output, StringComparison.Ordinal);
        Assert.Contains("note DW3044: ", stopped.Last.Output, StringComparison.Ordinal);
        bool IsDead(string row) => row.Split(',') is var cells && cells[2] == dead[2] && cells[3] == dead[3];
        Assert.Contains(Rows(rest, "delivered", 2), IsDead);
        Assert.DoesNotContain(Rows(rest, "doses", 3).Concat(Rows(rest, "doses", 4)), IsDead);
        Assert.Equal(Rows(stopped.Job, "doses", 2), Rows(rest, "delivered", 2));
        Assert.Equal(ExitCode.Done, (await Words.Run("verify", rest, "--quiet")).Code);
        AssertWaterAddsUp(rest);
    }

    [Fact]
    public async Task Run_log_stands_in_the_delivered_tables_and_is_answered()
    {
        string[] row = Rows(stopped.Job, "doses", 2)[0].Split(','), lost = Rows(stopped.Job, "doses", 2)[1].Split(',');
        string log = stopped.Yard.Write("run.csv", $"{LogHeader}2,{row[1]},{row[2]},{row[3]},7.5\n2,{lost[1]},{lost[2]},{lost[3]},0\n");
        string rest = await stopped.Resume(ExitCode.Done, 2, 0, "0 s", "--run-log", log);
        Assert.Contains("run.csv:1:1: note DW8304: ", stopped.Last.Output, StringComparison.Ordinal);
        string[] given = Rows(rest, "delivered", 2);
        Assert.Equal(Rows(stopped.Job, "doses", 2).Length - 1, given.Length);
        Assert.Equal(["7.50", row[10]], given[0].Split(',')[9..]);
        AssertWaterAddsUp(rest);
        Assert.Equal(ExitCode.Done, (await Words.Run("verify", rest, "--quiet")).Code);

        // Every dose named as tabled is no difference.
        string full = string.Concat(Rows(stopped.Job, "doses", 2).Select(r => r.Split(',')).Select(r => $"{r[0]},{r[1]},{r[2]},{r[3]},{r[9]}\n"));
        await stopped.Resume(ExitCode.Done, 2, 0, "0 s", "--run-log", stopped.Yard.Write("full.csv", LogHeader + full));
        Assert.Contains("as tabled: nothing has changed", stopped.Last.Output, StringComparison.Ordinal);
        Assert.Contains("note DW3043: ", stopped.Last.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("DW8304", stopped.Last.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("DW3044", stopped.Last.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Bin_whose_unit_no_longer_meets_what_it_met_is_scrapped_and_nothing_is_left_to_print()
    {
        string all = string.Concat(Enumerable.Range(0, 50).Select(i => $"{i % 10 + 1},{i / 10 + 1},,,blocked,1,0,,\n"));
        string needles = stopped.Yard.Write("alldead.csv", NeedleHeader + all);
        string held = await stopped.Resume(ExitCode.No, 2, 0, "5 min", "--needles", needles);
        Assert.EndsWith(".held.job", held, StringComparison.Ordinal);
        Assert.Contains("error DW3041: ", stopped.Last.Output, StringComparison.Ordinal);
        Assert.Contains("SCRAP, nothing to print", stopped.Last.Output, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(held, "doses")) || File.Exists(Path.Combine(held, "sequence.csv")));
    }

    [Fact]
    public async Task Layer_in_two_goes_beyond_its_window_is_predicted_with_an_upright_joint()
    {
        string? solid = null;
        foreach (string pause in (string[])["25 min", "3 h"])
        {
            string rest = await stopped.Resume(ExitCode.Done, 2, 1, pause);
            Assert.Contains("warning DW3042: layer 3 is watered in two goes, ", stopped.Last.Output, StringComparison.Ordinal);
            AssertWaterAddsUp(rest);
            Assert.Equal(ExitCode.Done, (await Words.Run("verify", rest, "--quiet")).Code);
            string now = Convert.ToHexString(await File.ReadAllBytesAsync(Path.Combine(rest, "predicted.vti")));
            Assert.Equal(solid ?? now, now);
            solid = now;
        }

        await stopped.Resume(ExitCode.Done, 2, 1, "2 min");
        Assert.DoesNotContain("DW3042", stopped.Last.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("delivered table edited", "DW8206")]
    [InlineData("more layers said to be done", "DW8206")]
    [InlineData("pause made short", "DW8209")]
    [InlineData("byte in a delivered table", "DW8202")]
    public async Task Tampering_with_a_rest_is_found(string tampering, string code)
    {
        string rest = await stopped.Resume(ExitCode.Done, 2, 0, "25 min");
        switch (tampering)
        {
            case "delivered table edited": VerifyTests.Jobs.EditDose(Table(rest, "delivered", 2)); break;
            case "more layers said to be done": VerifyTests.Jobs.Replace(Path.Combine(rest, "job.json"), "\"after_layer\":2", "\"after_layer\":3"); break;
            case "pause made short": VerifyTests.Jobs.Replace(Path.Combine(rest, "job.json"), "\"pause_s\":1500", "\"pause_s\":60"); break;
            default:
                byte[] bytes = await File.ReadAllBytesAsync(Table(rest, "delivered", 2));
                bytes[^2] ^= 1;
                await File.WriteAllBytesAsync(Table(rest, "delivered", 2), bytes);
                break;
        }

        if (tampering != "byte in a delivered table")
        {
            VerifyTests.Jobs.MendAll(rest);
        }

        Words.Answer answer = await Words.Run("verify", rest, "--quiet");
        Assert.Equal(ExitCode.No, answer.Code);
        Assert.Contains($"error {code}: ", answer.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--after 5: the job has 4 layers", "--after", "5", "--pause", "0 s")]
    [InlineData("--after 4: the job has 4 layers", "--after", "4", "--station", "1", "--pause", "0 s")]
    [InlineData("--after 4: no dose is left", "--after", "4", "--pause", "0 s")]
    [InlineData("--after 3: no dose is left", "--after", "3", "--station", "2", "--pause", "0 s")]
    [InlineData("--after 0 leaves nothing done", "--after", "0", "--pause", "0 s")]
    [InlineData("--station 3: the head has 2 stations", "--after", "1", "--station", "3", "--pause", "0 s")]
    [InlineData("--after takes a whole number", "--after", "one", "--pause", "0 s")]
    [InlineData("--pause: `25` has no unit of measure", "--after", "1", "--pause", "25")]
    [InlineData("--pause: `25 mm`: `mm` is a unit of length", "--after", "1", "--pause", "25 mm")]
    [InlineData("--pause: 40 d is above 30 d", "--after", "1", "--pause", "40 d")]
    [InlineData("Option '--pause' is required", "--after", "1")]
    [InlineData("Option '--after' is required", "--pause", "0 s")]
    public async Task Stop_that_cannot_be_ends_with_2_and_one_message_and_writes_nothing(string message, params string[] words)
    {
        string output = stopped.Yard.In($"none{Guid.NewGuid():N}");
        Words.Answer answer = await Words.Run(["resume", stopped.Job, "-o", output, .. words]);
        Assert.Equal(ExitCode.InputAtFault, answer.Code);
        Assert.Contains(message, answer.Error, StringComparison.Ordinal);
        Assert.Equal("", answer.Output);
        Assert.False(Directory.Exists(output));
    }

    [Theory]
    [InlineData("layer,station\n", ":1:1: error DW8301")]
    [InlineData(LogHeader + "2,1,4,4\n", ":2:1: error DW8302")]
    [InlineData(LogHeader + "2,1,4,4,7.0\n2,1,5,4,7..9\n", ":3:9: error DW8302")]
    [InlineData(LogHeader + "2,1.5,4,4,7.0\n", ":2:3: error DW8302")]
    [InlineData(LogHeader + "2,1,4,4,-1\n", ":2:9: error DW8302")]
    [InlineData(LogHeader + "3,1,4,4,7.0\n", ":2:1: error DW8303")]
    [InlineData(LogHeader + "2,1,4,4,7.0\n2,1,4,4,7.0\n", ":3:1: error DW8303")]
    public async Task Run_log_at_fault_is_refused_with_its_place(string text, string place)
    {
        string log = stopped.Yard.Write("bad.csv", text), output = stopped.Yard.In("badlog");
        Words.Answer answer = await Words.Run("resume", stopped.Job, "--after", "2", "--pause", "0 s", "--run-log", log, "-o", output, "--quiet");
        Assert.Equal(ExitCode.InputAtFault, answer.Code);
        Assert.Contains("bad.csv" + place, answer.Output, StringComparison.Ordinal);
        Assert.Single(answer.Output.Split('\n'), line => line.Contains(": error ", StringComparison.Ordinal));
        Assert.False(Directory.Exists(output));
    }

    [Fact]
    public async Task Rest_of_a_rest_a_held_job_and_no_job_are_refused()
    {
        string rest = await stopped.Resume(ExitCode.Done, 1, 0, "0 s");
        Words.Answer again = await Words.Run("resume", rest, "--after", "2", "--pause", "0 s");
        Assert.Equal(ExitCode.InputAtFault, again.Code);
        Assert.Contains("a print is resumed once", again.Error, StringComparison.Ordinal);
        string strict = stopped.Yard.Write("strict.unit.yaml", SmallYard.Unit.Replace("max: 40 kg", "max: 5 kg"));
        await Words.Run("compile", strict, "-o", stopped.Yard.In("held"), "--cells", "4", "--quiet");
        foreach (string none in (string[])[stopped.Yard.In("held", "strict.held.job"), stopped.Yard.In("nothing.job")])
        {
            Words.Answer answer = await Words.Run("resume", none, "--after", "2", "--pause", "0 s", "--quiet");
            Assert.Equal(ExitCode.InputAtFault, answer.Code);
            Assert.Contains("error DW8109: ", answer.Output, StringComparison.Ordinal);
        }
    }

    private static string Table(string job, string folder, int layer) => Path.Combine(job, folder, $"layer-{layer:D3}.csv");

    private static string[] Rows(string job, string folder, int layer) => File.Exists(Table(job, folder, layer)) ? File.ReadAllLines(Table(job, folder, layer))[1..] : [];

    private static string[] Steps(string job) => [.. File.ReadAllLines(Path.Combine(job, "sequence.csv")).Skip(1).Select(row => row[(row.IndexOf(',', StringComparison.Ordinal) + 1)..])];

    private static JsonNode Json(string job, string file) => JsonNode.Parse(File.ReadAllText(Path.Combine(job, file)))!;

    // Conservation: what was delivered and what is to come is what the field was given.
    private static void AssertWaterAddsUp(string job)
    {
        decimal tables = Enumerable.Range(1, 4).SelectMany(layer => Rows(job, "doses", layer).Concat(Rows(job, "delivered", layer)))
            .Sum(row => decimal.Parse(row.Split(',')[9], CultureInfo.InvariantCulture));
        Assert.Equal(tables, (decimal)Json(job, "manifest.json")["totals"]!["water_ml"]!);
    }

    /// <summary>A small job, compiled once.</summary>
    public sealed class Stopped : IAsyncLifetime
    {
        private int folders;

        internal SmallYard Yard { get; } = new();

        internal string Job => Yard.In("out", "small.job");

        internal Words.Answer Last { get; private set; } = new(0, "", "");

        public async ValueTask InitializeAsync() => await Words.Run("compile", Yard.UnitFile, "-o", Yard.In("out"), "--cells", "4", "--quiet");

        public ValueTask DisposeAsync()
        {
            Yard.Dispose();
            return ValueTask.CompletedTask;
        }

        /// <summary>Resumes into a folder of its own.</summary>
        internal async Task<string> Resume(int code, int after, int station, string pause, params string[] more)
        {
            string output = Yard.In($"rest{Interlocked.Increment(ref folders)}");
            string[] where = station > 0 ? ["--station", $"{station}"] : [];
            Last = await Words.Run(["resume", Job, "--after", $"{after}", .. where, "--pause", pause, "-o", output, .. more]);
            Assert.True(code == Last.Code, Last.Output + Last.Error);
            return Assert.Single(Directory.GetDirectories(output));
        }
    }
}
