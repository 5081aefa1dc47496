using System.Text.Json;
using System.Text.Json.Nodes;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Schema;
using Json.Schema;

namespace Dewstone.Reading.Tests.Schema;

public sealed class JsonSchemaWriterTests
{
    public static TheoryData<DescriptionKind> AllKinds => [.. Kinds.All];

    public static TheoryData<DescriptionKind, string> Samples => new()
    {
        { DescriptionKind.Unit, SampleFiles.Unit },
        { DescriptionKind.Mix, SampleFiles.Mix },
        { DescriptionKind.Printer, SampleFiles.Printer },
        { DescriptionKind.Site, SampleFiles.Site },
        { DescriptionKind.Order, SampleFiles.Order },
    };

    /// <summary>After a wanted change of a key table: write the stored file anew with <c>dewstone schema KIND</c>.</summary>
    [Theory]
    [MemberData(nameof(AllKinds))]
    public void Stored_schema_equals_the_one_of_the_key_table(DescriptionKind kind) =>
        Assert.Equal(JsonSchemaWriter.Write(kind), File.ReadAllText(Stored(kind)));

    [Theory]
    [MemberData(nameof(AllKinds))]
    public void Schema_is_a_good_schema_of_its_draft(DescriptionKind kind)
    {
        JsonNode? schema = JsonNode.Parse(JsonSchemaWriter.Write(kind));

        Assert.True(MetaSchemas.Draft202012.Evaluate(schema.Deserialize<JsonElement>()).IsValid);
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Sample_of_the_manual_meets_its_schema(DescriptionKind kind, string path)
    {
        EvaluationResults results = Evaluate(kind, File.ReadAllText(path));

        Assert.True(results.IsValid, Faults(results));
    }

    [Theory]
    [MemberData(nameof(AllKinds))]
    public void Template_meets_its_schema(DescriptionKind kind)
    {
        EvaluationResults results = Evaluate(kind, TemplateWriter.Write(kind));

        Assert.True(results.IsValid, Faults(results));
    }

    [Theory]
    [InlineData("rounding: 50 mm", "rounding: 50")]
    [InlineData("rounding: 50 mm", "rounding: 50 kg")]
    [InlineData("rounding: 50 mm", "roundig: 50 mm")]
    [InlineData("along: x", "along: w")]
    [InlineData("clear: 200 mm", "path: [[0 mm, 0 mm, 0 mm], [1 m, 1 m, 1 m]]")]
    [InlineData("box: [900 mm, 900 mm, 900 mm]", "box: [900 mm, 900 mm]")]
    [InlineData("version: 1", "version: 2")]
    [InlineData("kind: unit", "kind: mix")]
    public void Broken_unit_fails_its_schema(string good, string bad)
    {
        string text = File.ReadAllText(SampleFiles.Unit);
        int at = text.IndexOf(good, StringComparison.Ordinal);

        Assert.False(Evaluate(DescriptionKind.Unit, text[..at] + bad + text[(at + good.Length)..]).IsValid);
    }

    private static string Stored(DescriptionKind kind) => Path.Combine(Repository.Schemas, DescriptionTables.Word(kind) + ".schema.json");

    private static EvaluationResults Evaluate(DescriptionKind kind, string yaml) =>
        JsonSchema.FromText(JsonSchemaWriter.Write(kind)).Evaluate(
            YamlAsJson.Convert(yaml).Deserialize<JsonElement>(), new EvaluationOptions { OutputFormat = OutputFormat.List });

    private static string Faults(EvaluationResults results) => string.Join("\n", (results.Details ?? [])
        .Where(detail => detail.Errors is not null)
        .Select(detail => $"{detail.InstanceLocation}: {string.Join("; ", detail.Errors!.Select(error => error.Value))}"));
}
