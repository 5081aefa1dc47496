using System.Text.Json.Nodes;

namespace Dewstone.Cli.Tests.Commands;

/// <summary>Scale weights and gauges against a small job.</summary>
public sealed class SurveyMeasureTests(SurveyYard yard) : IClassFixture<SurveyYard>
{
    private static readonly double[] Noise = [0.1, -0.2, 0.15, -0.05, 0.2, -0.1, 0.05, -0.15, 0.1, -0.1, 0.2, -0.2];

    [Fact]
    public async Task Weights_as_predicted_are_in_control()
    {
        double predicted = await Predicted();
        Words.Answer answer = await Weigh(Noise.Select(n => predicted + n));
        Assert.True(answer.Code == ExitCode.Done, answer.Output + answer.Error);
        Assert.DoesNotContain("DW", answer.Output, StringComparison.Ordinal);
        Assert.Contains("provisional below 20 units", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Weights_off_the_prediction_point_to_density_and_doses()
    {
        double predicted = await Predicted();
        Words.Answer answer = await Weigh(Noise.Select(n => 1.04 * predicted + n), "--json");
        JsonNode weights = JsonNode.Parse(answer.Output)!["weights"]!;
        Repository.AssertValid("survey.schema.json", answer.Output);
        Assert.Contains("DW3083", answer.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("DW3084", answer.Output, StringComparison.Ordinal);

        // At the same hardened volume 4 % of mass are 4 % of the bed and its water together, so a little more than 4 % of the loose density of 1700 kg/m3.
        Assert.InRange((double)weights["explaining_loose_density_kg_m3"]!, 1768.0, 1790.0);
        Assert.InRange((double)weights["explaining_dose_change"]!, 0.03, 0.20);
    }

    [Fact]
    public async Task Weights_that_drift_or_jump_are_named()
    {
        double predicted = await Predicted();
        Words.Answer drift = await Weigh(Noise.Select((n, i) => predicted + n - 0.15 * i));
        Assert.Contains("warning DW3084: from `U1` to `U12` the weight changes by -1.", drift.Output, StringComparison.Ordinal);
        Words.Answer jump = await Weigh(Noise.Select((n, i) => predicted + n + (i == 6 ? 3.0 : 0.0)));
        Assert.Contains(":8:1: warning DW3082: `U7` weighs ", jump.Output, StringComparison.Ordinal);
        Assert.Contains(":8:1: warning DW3082: `U7` differs by ", jump.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("mark,weighed\nU1,30\n", ":1:6: error DW8340: `weighed` does not say its unit")]
    [InlineData("mark,weighed_kg\nU1,30\nU2,31\n", ":1:1: error DW8343: 2 weights are too few")]
    [InlineData("mark,weighed_kg\nU1,30\n,31\nU3,30\n", ":3:1: error DW8341: `mark` is empty")]
    [InlineData("mark,weighed_kg\nU1,30\nU2,31,5\nU3,30\n", ":3:1: error DW8342")]
    [InlineData("mark,weighed_kg\nU1,30 kg\n", ":2:4: error DW8341: `30 kg` is no plain number")]
    public async Task Weights_at_fault_are_refused_with_their_place(string text, string place)
    {
        Words.Answer answer = await Words.Run("survey", yard.Job, "--weights", yard.Yard.Write("bad.csv", text), "--quiet");
        Assert.Equal(ExitCode.InputAtFault, answer.Code);
        Assert.Contains("bad.csv" + place, answer.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("drain,opening,70\n", ExitCode.Done, "as predicted     drain: 70 mm")]
    [InlineData("drain,opening,41\n", ExitCode.No, ":2:1: error DW3085: the largest ball through `drain` is 41 mm")]
    [InlineData("drian,opening,70\n", ExitCode.InputAtFault, ":2:1: error DW8344: the unit has no opening `drian`")]
    [InlineData(",wall,70\n", ExitCode.Done, "as predicted     wall: 70 mm")]
    [InlineData("west,wall,8\n", ExitCode.No, ":2:1: error DW3086: the wall `west` measures 8 mm")]
    [InlineData("drain,hole,70\n", ExitCode.InputAtFault, ":2:7: error DW8341: `hole` will not do as `kind`")]
    public async Task Gauges_are_held_against_the_prediction(string rows, int code, string said)
    {
        Words.Answer answer = await Words.Run("survey", yard.Job, "--gauges", yard.Yard.Write("gauges.csv", "name,kind,reading_mm\n" + rows), "--quiet");
        Assert.True(code == answer.Code, answer.Output + answer.Error);
        Assert.Contains(said, answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Gauges_in_inches_are_read_as_such()
    {
        Words.Answer answer = await Words.Run("survey", yard.Job, "--gauges", yard.Yard.Write("inches.csv", "name,kind,reading_in\ndrain,opening,2.8\n"), "--json", "--quiet");
        Repository.AssertValid("survey.schema.json", answer.Output);
        Assert.Equal(0.07112, (double)JsonNode.Parse(answer.Output)!["gauges"]![0]!["reading_m"]!, 1e-9);
    }

    [Fact]
    public async Task Folder_is_written_whole_replaced_by_a_survey_only_and_never_within_the_job()
    {
        double predicted = await Predicted();
        SortedDictionary<string, string> job = SmallYard.Hashes(yard.Job);
        string output = yard.Yard.In("surveys"), folder = Path.Combine(output, "tall.survey");
        Words.Answer first = await Weigh(Noise.Select(n => predicted + n), "-o", output, "--scan", Path.Combine(yard.Job, "predicted.stl"));
        Assert.True(first.Code == ExitCode.Done, first.Output + first.Error);
        Assert.Equal(["deviation.glb", "deviation.png", "survey.json", "weights-moving-range.svg", "weights.svg"], SmallYard.Hashes(folder).Keys);
        Repository.AssertValid("survey.schema.json", await File.ReadAllTextAsync(Path.Combine(folder, "survey.json")));
        string surface = System.Text.Encoding.Latin1.GetString(await File.ReadAllBytesAsync(Path.Combine(folder, "deviation.glb")));
        Assert.StartsWith("glTF", surface, StringComparison.Ordinal);
        Assert.Contains("\"COLOR_0\"", surface, StringComparison.Ordinal);
        Assert.DoesNotContain("_WATER_CEMENT", surface, StringComparison.Ordinal);
        SortedDictionary<string, string> written = SmallYard.Hashes(folder);
        await Weigh(Noise.Select(n => predicted + n), "-o", output, "--scan", Path.Combine(yard.Job, "predicted.stl"), "--threads", "1");
        Assert.Equal(written, SmallYard.Hashes(folder));
        Assert.Single(Directory.GetFileSystemEntries(output));

        await File.WriteAllTextAsync(Path.Combine(folder, "survey.json"), "{}");
        Words.Answer foreign = await Weigh(Noise.Select(n => predicted + n), "-o", output);
        Assert.Equal(ExitCode.CannotCreate, foreign.Code);
        Assert.Contains("no survey's folder, so it is not replaced", foreign.Output, StringComparison.Ordinal);
        Words.Answer within = await Weigh(Noise.Select(n => predicted + n), "-o", Path.Combine(yard.Job, "sub"));
        Assert.Equal(ExitCode.InputAtFault, within.Code);
        Assert.Contains("-o lies within the job folder", within.Error, StringComparison.Ordinal);
        Assert.Equal(job, SmallYard.Hashes(yard.Job));
    }

    [Fact]
    public async Task Charts_show_every_unit_and_every_limit()
    {
        double predicted = await Predicted();
        string output = yard.Yard.In("charts");
        await Weigh(Noise.Select((n, i) => predicted + n + (i == 6 ? 3.0 : 0.0)), "-o", output);
        string chart = await File.ReadAllTextAsync(Path.Combine(output, "tall.survey", "weights.svg"));
        foreach (string label in (string[])["Small step: weights one by one", ">mean ", ">upper limit ", ">lower limit ", ">predicted ", ">U7<", "weight, kg"])
        {
            Assert.Contains(label, chart, StringComparison.Ordinal);
        }
    }

    private async Task<double> Predicted() => (double)JsonNode.Parse(await File.ReadAllTextAsync(Path.Combine(yard.Job, "manifest.json")))!["totals"]!["lift_kg"]!;

    private async Task<Words.Answer> Weigh(IEnumerable<double> kilograms, params string[] more) => await Words.Run([
        "survey", yard.Job, "--quiet", .. more, "--weights",
        yard.Yard.Write("weights.csv", "mark,weighed_kg\n" + string.Concat(kilograms.Select((k, i) => FormattableString.Invariant($"U{i + 1},{k:0.000}\n")))),
    ]);
}
