using System.Text.Json;
using Dewstone.Jobs.Emission;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Jobs.Tests.Emission;

/// <summary>Holds the log against the structure that SARIF 2.1.0 prescribes (sections 3.13 to 3.35 of the standard).</summary>
public sealed class FindingsEmitterTests
{
    private static readonly Diagnostic Known = JobFolderFindings.Superseded.At("the older job is put aside", "mend and compile again", location: new SourceLocation("a b/Ü#1.unit.yaml", 4, 0));

    [Fact]
    public void Log_has_the_members_the_standard_requires()
    {
        JsonElement log = Log([Known, Samples.SolidError, Known with { AcceptedBecause = "seen" }]);
        JsonElement run = log.GetProperty("runs")[0];
        JsonElement driver = run.GetProperty("tool").GetProperty("driver");

        Assert.Equal("2.1.0", log.GetProperty("version").GetString());
        Assert.EndsWith("/sarif-schema-2.1.0.json", log.GetProperty("$schema").GetString(), StringComparison.Ordinal);
        Assert.Equal(1, log.GetProperty("runs").GetArrayLength());
        Assert.Equal("dewstone 0.1.0", $"{driver.GetProperty("name")} {driver.GetProperty("version")}");
        Assert.Equal("utf16CodeUnits", run.GetProperty("columnKind").GetString());
        Assert.Equal(["DW3999", "DW8105"], driver.GetProperty("rules").EnumerateArray().Select(rule => rule.GetProperty("id").GetString()));
        foreach (JsonElement result in run.GetProperty("results").EnumerateArray())
        {
            Assert.Equal(
                result.GetProperty("ruleId").GetString(),
                driver.GetProperty("rules")[result.GetProperty("ruleIndex").GetInt32()].GetProperty("id").GetString());
            Assert.Contains(result.GetProperty("level").GetString(), (string[])["error", "warning", "note"]);
            Assert.NotEmpty(result.GetProperty("message").GetProperty("text").GetString()!);
        }
    }

    [Fact]
    public void Rule_carries_the_words_of_the_catalogue()
    {
        JsonElement rule = Log([Known]).GetProperty("runs")[0].GetProperty("tool").GetProperty("driver").GetProperty("rules")[0];

        Assert.Equal(JobFolderFindings.Superseded.Title, rule.GetProperty("shortDescription").GetProperty("text").GetString());
        Assert.Equal(JobFolderFindings.Superseded.Cure, rule.GetProperty("help").GetProperty("text").GetString());
        Assert.Equal("warning", rule.GetProperty("defaultConfiguration").GetProperty("level").GetString());
    }

    [Fact]
    public void Places_are_relative_uris_with_lines_from_1()
    {
        JsonElement error = Results([Samples.SolidError])[0];
        JsonElement place = error.GetProperty("locations")[0].GetProperty("physicalLocation");
        JsonElement related = error.GetProperty("relatedLocations")[0];

        Assert.Equal("units/pebble.unit.yaml", place.GetProperty("artifactLocation").GetProperty("uri").GetString());
        Assert.Equal("""{"startLine":33,"startColumn":3}""", Plain(place.GetProperty("region")));
        Assert.Equal("the mix", related.GetProperty("message").GetProperty("text").GetString());

        // A finding about a whole line has no column, and a uri escapes what it must (RFC 3986).
        JsonElement line = Results([Known])[0].GetProperty("locations")[0].GetProperty("physicalLocation");
        Assert.Equal("""{"startLine":4}""", Plain(line.GetProperty("region")));
        Assert.Equal("a%20b/%C3%9C%231.unit.yaml", line.GetProperty("artifactLocation").GetProperty("uri").GetString());
    }

    [Fact]
    public void Finding_without_a_place_has_no_locations()
    {
        JsonElement result = Results([Known with { Location = null }])[0];

        Assert.False(result.TryGetProperty("locations", out _));
        Assert.False(result.TryGetProperty("suppressions", out _));
    }

    [Fact]
    public void Whole_file_finding_has_no_region() =>
        Assert.False(Results([Known with { Location = new SourceLocation("x.yaml", 0, 0) }])[0].GetProperty("locations")[0]
            .GetProperty("physicalLocation").TryGetProperty("region", out _));

    [Fact]
    public void Released_finding_is_suppressed_with_its_reason()
    {
        JsonElement suppression = Results([Samples.SolidError with { AcceptedBecause = "trial piece" }])[0].GetProperty("suppressions")[0];

        Assert.Equal("""{"kind":"external","status":"accepted","justification":"trial piece"}""", Plain(suppression));
    }

    [Fact]
    public void Place_in_the_unit_is_given_to_a_tenth_of_a_millimetre()
    {
        JsonElement properties = Results([Samples.SolidError])[0].GetProperty("properties");

        Assert.Equal([50.0, 25.0, 12.3], properties.GetProperty("unit_frame_mm").EnumerateArray().Select(value => value.GetDouble()));
        Assert.Equal("make the walls thicker", properties.GetProperty("remedy").GetString());
    }

    [Fact]
    public void No_findings_make_an_empty_but_whole_log() => Assert.Equal(0, Results([]).GetArrayLength());

    private static JsonElement Results(IReadOnlyList<Diagnostic> findings) => Log(findings).GetProperty("runs")[0].GetProperty("results");

    private static JsonElement Log(IReadOnlyList<Diagnostic> findings) =>
        JsonDocument.Parse(FindingsEmitter.Emit(findings, "0.1.0", file => file.Replace("/yard/", "", StringComparison.Ordinal)).Bytes).RootElement;

    private static string Plain(JsonElement element) => JsonSerializer.Serialize(element);
}
