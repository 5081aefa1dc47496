using System.Text.Json;
using Json.Schema;

namespace Dewstone.Cli.Tests.Commands;

public sealed class LimitsTests
{
    private static readonly Lazy<JsonSchema> Schema = new(() => JsonSchema.FromFile(Repository.Path("schemas", "limits.schema.json")));
    private static readonly Lazy<Task<Words.Answer>> Json = new(() => OnSmallYard(SmallYard.Printer.Replace(", layer_shift: half pitch", ""), "--json"));
    private static readonly Lazy<Task<Words.Answer>> Text = new(() => OnSmallYard(
        SmallYard.Printer.Replace("step: 0.1 mL}", "step: 0.1 mL, repeatability: 2 %, drift: 5 %}")));

    [Fact]
    public async Task Card_reads_well_at_80_columns_with_both_ways_of_layering()
    {
        Words.Answer answer = await Text.Value;

        Assert.True(answer.Code == ExitCode.Done, answer.Output + answer.Error);
        string[] lines = answer.Output.Split('\n');
        Assert.StartsWith("Small mix on Small printer: pitch 50 mm, layer 50 mm", lines.First(line => !line.StartsWith(' ') && !line.Contains("DW", StringComparison.Ordinal)));
        Assert.All(lines, line => Assert.True(line.Length <= 80, line));
        Assert.Single(lines, line => line.TrimEnd().EndsWith("straight layers    shifted layers", StringComparison.Ordinal));
        foreach (string wanted in new[]
        {
            "hole along x or y, stays open from", "hole along x or y, 75 % clear from", "hole along z, stays open from", "hole along z, 75 % clear from",
            "upright wall, sound from", "level slab, sound from",
        })
        {
            Assert.Matches(@"^ +\S.*from +(\d+|over \d+) / (\d+|over \d+) +(\d+|over \d+) / (\d+|over \d+)$", Assert.Single(lines, line => line.Contains(wanted, StringComparison.Ordinal)));
        }

        Assert.Contains("calibrate it before", answer.Output, StringComparison.Ordinal);
        Assert.Contains("TOO NARROW for 50 of 50 needles.", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Json_fits_the_stored_schema_and_says_what_is_unknown()
    {
        Words.Answer answer = await Json.Value;

        Assert.Equal((ExitCode.Done, ""), (answer.Code, answer.Error));
        using JsonDocument document = JsonDocument.Parse(answer.Output);
        EvaluationResults result = Schema.Value
            .Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, string.Join('\n', (result.Details ?? []).Where(d => d.Errors is { Count: > 0 }).Select(d => $"{d.InstanceLocation} {string.Join(' ', d.Errors!.Values)}")));
        JsonElement card = document.RootElement.GetProperty("card");
        Assert.Equal("straight", Assert.Single(card.GetProperty("layerings").EnumerateArray()).GetProperty("layers").GetString());
        JsonElement window = card.GetProperty("dose_window");
        Assert.Equal("unknown", window.GetProperty("verdict").GetString());

        // Dose balance of a voxel: 0.55 x 425 kg/m3 x 0.05^3 m3 / 1000 kg/m3 = 29.21875 mL, written to 6 digits.
        Assert.Equal(29.2188, window.GetProperty("most_ml").GetDouble());
    }

    [Fact]
    public async Task Schema_misses_no_member_that_is_written()
    {
        using JsonDocument document = JsonDocument.Parse((await Json.Value).Output);
        string schema = await File.ReadAllTextAsync(Repository.Path("schemas", "limits.schema.json"));
        Assert.All(Names(document.RootElement).Distinct(), name => Assert.Contains($"\"{name}\": {{", schema, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("DW8001", "no.mix.yaml", "small.printer.yaml")]
    [InlineData("DW1009", "small.printer.yaml", "small.printer.yaml")]
    [InlineData("DW1009", "small.mix.yaml", "small.unit.yaml")]
    public async Task File_that_is_missing_or_of_another_kind_ends_with_2_and_one_finding(string code, string mix, string printer)
    {
        using SmallYard yard = new();
        Words.Answer answer = await Words.Run("limits", "--mix", yard.In(mix), "--printer", yard.In(printer));
        Assert.Equal(ExitCode.InputAtFault, answer.Code);
        Assert.Contains(code, Assert.Single(answer.Output.Split('\n'), line => line.Contains("error DW", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.EndsWith("no limits card: mend what stands above\n", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Printer_that_cannot_work_ends_with_2_at_its_line_and_json_without_a_card()
    {
        using SmallYard yard = new();
        Words.Answer odd = await Words.Run("limits", "--mix", yard.In("small.mix.yaml"), "--printer", yard.In("small.printer.yaml"), "--cells", "7", "--json", "--quiet");
        Assert.Equal(ExitCode.InputAtFault, odd.Code);
        using JsonDocument document = JsonDocument.Parse(odd.Output);
        Assert.False(document.RootElement.TryGetProperty("card", out _));
        Assert.Contains(document.RootElement.GetProperty("findings").EnumerateArray(), f => f.GetProperty("code").GetString() == "DW4015");
        Assert.True(Schema.Value.Evaluate(document.RootElement).IsValid);
    }

    [Fact]
    public async Task Limit_at_or_below_the_setting_ratio_is_refused()
    {
        using SmallYard yard = new();
        Words.Answer answer = await Words.Run("limits", "--mix", yard.In("small.mix.yaml"), "--printer", yard.In("small.printer.yaml"), "--water-cement", "0.22");
        Assert.Equal((ExitCode.InputAtFault, ""), (answer.Code, answer.Output));
        Assert.Contains("--water-cement 0.22 is not above 0.22, at which Small mix sets", answer.Error, StringComparison.Ordinal);
    }

    private static async Task<Words.Answer> OnSmallYard(string printer, params string[] more)
    {
        using SmallYard yard = new();
        return await Words.Run(
            ["limits", "--mix", yard.In("small.mix.yaml"), "--printer", yard.Write("own.printer.yaml", printer), "--water-cement", "0.55", "--cells", "8", "--quiet", .. more]);
    }

    private static IEnumerable<string> Names(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(member => Names(member.Value).Prepend(member.Name)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(Names),
        _ => [],
    };
}
