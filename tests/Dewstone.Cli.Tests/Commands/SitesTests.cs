using System.Text.Json;

namespace Dewstone.Cli.Tests.Commands;

/// <summary>A unit at sites: one in a job, several compared by <c>check</c>.</summary>
public sealed class SitesTests : IDisposable
{
    private readonly SmallYard yard = new();

    public void Dispose() => yard.Dispose();

    [Fact]
    public async Task Check_compares_sites_and_judges_by_the_first_alone()
    {
        string calm = Site("calm", "0.2 m", "0.1 m/s"), wild = Site("wild", "2 m", "3 m/s");
        Words.Answer answer = await Words.Run("check", yard.UnitFile, "--cells", "4", "--site", calm, "--site", wild, "--quiet");
        Assert.True(answer.Code == ExitCode.Done, answer.Output + answer.Error);
        Assert.Contains("calm: factors of safety", answer.Output, StringComparison.Ordinal);
        Assert.Contains("wild: factors of safety", answer.Output, StringComparison.Ordinal);
        Assert.Contains("(would be held there)", answer.Output, StringComparison.Ordinal);

        Words.Answer turned = await Words.Run("check", yard.UnitFile, "--cells", "4", "--site", wild, "--site", calm, "--quiet", "--json");
        Assert.Equal(ExitCode.No, turned.Code);
        Repository.AssertValid("check.schema.json", turned.Output);
        JsonElement unit = JsonDocument.Parse(turned.Output).RootElement.GetProperty("units")[0], other = unit.GetProperty("elsewhere")[0];
        Assert.Equal(("wild", "calm"), (unit.GetProperty("sea").GetProperty("site").GetString(), other.GetProperty("sea").GetProperty("site").GetString()));
        Assert.True(
            unit.GetProperty("sea").GetProperty("least_saturated_kg").GetDouble() > other.GetProperty("sea").GetProperty("least_saturated_kg").GetDouble());
        Assert.Contains(unit.GetProperty("findings").EnumerateArray(), finding => finding.GetProperty("code").GetString() == "DW6001");
        Assert.NotEqual(JsonValueKind.Null, unit.GetProperty("habitat").ValueKind);
    }

    [Fact]
    public async Task Job_has_its_table_and_diff_tells_what_another_site_changes()
    {
        string calm = Site("calm", "0.2 m", "0.1 m/s"), rough = Site("rough", "0.3 m", "0.1 m/s");
        foreach (string site in (string[])[calm, rough])
        {
            Words.Answer made = await Words.Run("compile", yard.UnitFile, "--cells", "4", "--site", site, "--quiet", "-o", yard.In(Path.GetFileNameWithoutExtension(site)));
            Assert.True(made.Code == ExitCode.Done, made.Output + made.Error);
        }

        string first = yard.In("calm.site", "small.job"), second = yard.In("rough.site", "small.job");
        Assert.True(File.Exists(Path.Combine(first, "stability.csv")));
        Assert.Equal(ExitCode.Done, (await Words.Run("verify", first)).Code);
        JsonElement diff = JsonDocument.Parse((await Words.Run("diff", first, second, "--json", "--quiet")).Output).RootElement;
        JsonElement sliding = diff.GetProperty("figures").EnumerateArray().Single(figure => figure.GetProperty("name").GetString() == "sea_sliding");
        Assert.True(sliding.GetProperty("new").GetDouble() < sliding.GetProperty("old").GetDouble());
        Assert.DoesNotContain(diff.GetProperty("figures").EnumerateArray(), figure => figure.GetProperty("name").GetString()!.StartsWith("habitat_", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Compile_takes_one_site()
    {
        Words.Answer answer = await Words.Run("compile", yard.UnitFile, "-o", yard.In("out"), "--site", Site("a", "0.2 m", "0.1 m/s"), "--site", Site("b", "0.2 m", "0.1 m/s"));

        Assert.Equal(ExitCode.InputAtFault, answer.Code);
        Assert.Contains("one site", answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Faulty_further_site_is_told()
    {
        string bad = yard.Write("bad.site.yaml", "kind: site\nversion: 1\nname: bad\n");
        Words.Answer answer = await Words.Run("check", yard.UnitFile, "--cells", "4", "--site", Site("calm", "0.2 m", "0.1 m/s"), "--site", bad, "--quiet");

        Assert.Equal(ExitCode.InputAtFault, answer.Code);
        Assert.Contains("DW1012", answer.Output, StringComparison.Ordinal);
    }

    private string Site(string name, string height, string speed) => yard.Write($"{name}.site.yaml", $$"""
        kind: site
        version: 1
        name: {{name}}
        water: {depth: 5 m}
        wave: {significant_height: {{height}}, peak_period: 5 s, direction: 250 deg}
        current: {speed: {{speed}}, direction: 90 deg}
        seabed: {soil: sand, friction: 0.55, friction_angle: 32 deg, effective_weight: 9 kN/m3, grain: 2 mm}
        """);
}
