using System.Text.Json;

namespace Dewstone.Cli.Tests.Commands;

public sealed class TrialsTests
{
    private static readonly string[] Own = ["trials.json", "trials.vti", "doubt.png"];

    /// <summary>The small yard with needles and a mix that are known to scatter.</summary>
    private static SmallYard Yard()
    {
        SmallYard yard = new();
        yard.Write("small.printer.yaml", SmallYard.Printer.Replace("step: 0.1 mL}", "step: 0.1 mL, repeatability: 2 %, drift: 5 %}"));
        yard.Write("small.mix.yaml", SmallYard.Mix + "\nuncertainty: {diffusivity: 20 %, threshold: 5 %, loose_density: 2 %}");
        return yard;
    }

    [Fact]
    public async Task Trials_stand_in_text_json_and_folder_with_the_same_bytes_for_any_number_of_threads()
    {
        using SmallYard yard = Yard();
        foreach (int threads in new[] { 1, 2, 3 })
        {
            Words.Answer answer = await Words.Run(
                "compile", yard.UnitFile, "-o", yard.In($"out{threads}"), "--cells", "4", "--trials", "6", "--threads", $"{threads}", "--json", "--quiet");
            Assert.True(answer.Code == ExitCode.Done, answer.Output + answer.Error);
            Repository.AssertValid("check.schema.json", answer.Output);
            JsonElement trials = JsonDocument.Parse(answer.Output).RootElement.GetProperty("units")[0].GetProperty("trials");
            Assert.Equal((6, 4), (trials.GetProperty("trials").GetInt32(), trials.GetProperty("cells_per_voxel").GetInt32()));
            Assert.Equal(["mass.max", "shape_match.min"], trials.GetProperty("requirements").EnumerateArray().Select(r => r.GetProperty("id").GetString()));
            string figures = await File.ReadAllTextAsync(yard.In($"out{threads}", "small.job", "trials.json"));
            Repository.AssertValid("trials.schema.json", figures);
            Assert.True(JsonElement.DeepEquals(trials.GetProperty("requirements"), JsonDocument.Parse(figures).RootElement.GetProperty("requirements")), figures);
        }

        SortedDictionary<string, string> one = SmallYard.Hashes(yard.In("out1", "small.job"));
        Assert.All(Own, name => Assert.Contains(name, one.Keys));
        Assert.Equal(one, SmallYard.Hashes(yard.In("out2", "small.job")));
        Assert.Equal(one, SmallYard.Hashes(yard.In("out3", "small.job")));
        Assert.Equal(ExitCode.Done, (await Words.Run("verify", yard.In("out1", "small.job"))).Code);
    }

    [Fact]
    public async Task Trials_change_nothing_of_the_job_itself()
    {
        using SmallYard yard = Yard();
        string[] words = ["compile", yard.UnitFile, "--cells", "4", "--quiet", "-o"];
        Words.Answer with = await Words.Run([.. words, yard.In("with"), "--trials", "2"]), without = await Words.Run([.. words, yard.In("without")]);
        Assert.Equal((ExitCode.Done, ExitCode.Done), (with.Code, without.Code));
        string job = await File.ReadAllTextAsync(yard.In("with", "small.job", "job.json"));

        Assert.Equal(await File.ReadAllTextAsync(yard.In("without", "small.job", "job.json")), job);
        Assert.All(Own, name => Assert.False(File.Exists(yard.In("without", "small.job", name)), name));
        Assert.DoesNotContain("  trials", without.Output, StringComparison.Ordinal);
    }

    /// <summary>The limit is put just above the job's own mass, so that the denser beds of the trials miss it; with one far above, nothing is said.</summary>
    [Fact]
    public async Task Requirement_with_next_to_no_room_is_a_warning_that_names_its_driver()
    {
        using SmallYard yard = Yard();
        string[] words = ["check", yard.UnitFile, "--cells", "4", "--trials", "12"];
        Words.Answer roomy = await Words.Run([.. words, "--json", "--quiet"]);
        Assert.DoesNotContain("DW3035", roomy.Output, StringComparison.Ordinal);
        double mass = JsonDocument.Parse(roomy.Output).RootElement.GetProperty("units")[0].GetProperty("figures").GetProperty("lift_kg").GetDouble();
        yard.Write("small.unit.yaml", SmallYard.Unit.Replace("max: 40 kg", FormattableString.Invariant($"max: {mass + 0.01:0.00} kg")));

        Words.Answer tight = await Words.Run(words);

        Assert.Equal(ExitCode.Done, tight.Code);
        Assert.Matches(@"small\.unit\.yaml:\d+:\d+: warning DW3035: mass on the hook at dig-out: \d+ of 12 trials meet it, .* misses go with high loose density", tight.Output);
        Assert.Matches(@"trials +12 on 4 cells a voxel, seed 1; fewer than 35 cannot show 90 %", tight.Output);
        Assert.Matches(@"trials +\d+ of 12 meet mass on the hook at dig-out \(Wilson \d+ to \d+ %\): [\d.]+ kg, 90 % from [\d.]+ kg to [\d.]+ kg", tight.Output);
        Assert.Contains("loose density 2 %, diffusivity 20 %, hardening threshold 5 %, bed temperature 2 K, needle drift 5 %, dose repeatability 2 %", tight.Output);
    }
}
