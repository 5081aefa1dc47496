using System.Text.Json;

namespace Dewstone.Cli.Tests.Commands;

/// <summary>Faults planted in a description come out of the whole flow as findings about the predicted solid, each at its place, and sound units have none.</summary>
public sealed class PlantedFaultsTests
{
    /// <summary>Warnings about the drawing and the needles, which name thin walls, the closed cavity and blocked needles before anything is wetted.</summary>
    private static readonly string[] BeforeWetting = ["DW2006", "DW2011", "DW3032", "DW4008"];

    /// <summary>A finding, and the middle of the fault it is about with half its extent, millimetres of the unit frame, from the description.</summary>
    private sealed record Planted(string Code, string Level, string Key, double[] Middle, double[] Half);

    private static readonly Planted[] All =
    [
        new("DW3015", "warning", "needles", [50, 50, 200], [50, 50, 200]),
        new("DW3020", "error", "require.loose_pieces.max", [225, 300, 300], [0, 0, 0]),
        new("DW3022", "error", "require.wall.min", [815, 300, 275], [15, 150, 125]),
        new("DW3023", "error", "require.trapped_mix.max", [575, 425, 200], [0, 0, 0]),
        new("DW3024", "error", "tunnels[0].clear", [450, 300, 75], [0, 300, 0]),
        new("DW3027", "warning", "keep[0]", [225, 300, 300], [0, 0, 0]),
        new("DW3027", "warning", "keep[1]", [50, 50, 200], [0, 0, 0]),
    ];

    [Fact]
    public async Task Planted_faults_are_found_where_they_are_and_nothing_else_is()
    {
        using SmallYard yard = new();
        Words.Answer answer = await Words.Run("compile", PlantedYard.Write(yard), "-o", yard.In("out"), "--json");

        Assert.Equal(ExitCode.No, answer.Code);
        Repository.AssertValid("check.schema.json", answer.Output);
        using JsonDocument document = JsonDocument.Parse(answer.Output);
        JsonElement unit = document.RootElement.GetProperty("units")[0];
        Assert.True(unit.GetProperty("held").GetBoolean());
        JsonElement[] found =
        [
            .. unit.GetProperty("findings").EnumerateArray()
                .Where(f => f.GetProperty("level").GetString() != "note" && !BeforeWetting.Contains(f.GetProperty("code").GetString())),
        ];
        Assert.Equal(
            All.Select(p => $"{p.Code} {p.Level} {p.Key}"),
            found.Select(f => $"{f.GetProperty("code").GetString()} {f.GetProperty("level").GetString()} {f.GetProperty("key").GetString()}").Order(StringComparer.Ordinal));
        foreach (Planted planted in All)
        {
            AssertThere(planted, found.Single(f => f.GetProperty("key").GetString() == planted.Key).GetProperty("unit_frame_mm"));
        }

        // The log of the folder says the same.
        string folder = yard.In("out", "planted.held.job");
        Assert.False(Directory.Exists(Path.Combine(folder, "doses")));
        using JsonDocument log = JsonDocument.Parse(await File.ReadAllTextAsync(Path.Combine(folder, "findings.sarif")));
        JsonElement[] results = [.. log.RootElement.GetProperty("runs")[0].GetProperty("results").EnumerateArray()];
        foreach (JsonElement finding in found)
        {
            JsonElement result = results.Single(r => r.GetProperty("message").GetProperty("text").GetString() == finding.GetProperty("message").GetString());
            JsonElement place = result.GetProperty("locations")[0].GetProperty("physicalLocation").GetProperty("region");
            Assert.Equal(finding.GetProperty("code").GetString(), result.GetProperty("ruleId").GetString());
            Assert.Equal(finding.GetProperty("level").GetString(), result.GetProperty("level").GetString());
            Assert.Equal(finding.GetProperty("line").GetInt32(), place.GetProperty("startLine").GetInt32());
            Assert.Equal(Place(finding), Place(result.GetProperty("properties")));
        }
    }

    [Fact]
    public async Task Tunnel_that_plain_doses_close_lets_nothing_through()
    {
        using SmallYard yard = new();
        Words.Answer answer = await Words.Run("check", PlantedYard.Write(yard), "--json", "--no-correction");

        using JsonDocument document = JsonDocument.Parse(answer.Output);
        JsonElement unit = document.RootElement.GetProperty("units")[0];
        JsonElement clear = unit.GetProperty("requirements").EnumerateArray().Single(r => r.GetProperty("id").GetString() == "clear");
        Assert.Equal(0.0, clear.GetProperty("value").GetDouble());
        JsonElement finding = unit.GetProperty("findings").EnumerateArray().Single(f => f.GetProperty("code").GetString() == "DW3024");
        Assert.StartsWith("\"pinhole\" sets shut", finding.GetProperty("message").GetString(), StringComparison.Ordinal);
        AssertThere(All.Single(p => p.Code == "DW3024"), finding.GetProperty("unit_frame_mm"));
    }

    [Theory]
    [InlineData("wrack-block")]
    [InlineData("tide-sill")]
    [InlineData("oyster-step")]
    public async Task Example_has_no_error(string unit)
    {
        Words.Answer answer = await Words.Run("check", Repository.Path("examples", "wrackline-bay", "units", unit + ".unit.yaml"), "--json");

        using JsonDocument document = JsonDocument.Parse(answer.Output);
        JsonElement checkedUnit = document.RootElement.GetProperty("units")[0];
        Assert.DoesNotContain(checkedUnit.GetProperty("findings").EnumerateArray(), f => f.GetProperty("level").GetString() == "error");
        Assert.All(checkedUnit.GetProperty("requirements").EnumerateArray(), r => Assert.True(r.GetProperty("met").GetBoolean(), r.GetRawText()));
        Assert.Equal(ExitCode.Done, answer.Code);
    }

    private static IEnumerable<double> Place(JsonElement holder) => holder.GetProperty("unit_frame_mm").EnumerateArray().Select(mm => mm.GetDouble());

    // Within the fault's extent and one pitch of it on every axis.
    private static void AssertThere(Planted planted, JsonElement place)
    {
        for (int axis = 0; axis < 3; axis++)
        {
            double reach = planted.Half[axis] + PlantedYard.PitchMillimetres;
            Assert.InRange(place[axis].GetDouble(), planted.Middle[axis] - reach, planted.Middle[axis] + reach);
        }
    }
}
