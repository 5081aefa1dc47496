using System.Text.Json.Nodes;

namespace Dewstone.Cli.Tests.Commands;

public sealed class OrderPlanTests : IDisposable
{
    private const string Order = """
        kind: order
        version: 1
        name: Small order
        start: 2027-03-01
        due: 2027-03-31
        units:
          - {file: small.unit.yaml, quantity: 3, mark: SM}
        printers: [small.printer.yaml]
        bins: {count: 5, change: 10 min, curing_places: 5, handling: 500 kg, set_before_dig: 36 h}
        """;

    private readonly SmallYard yard = new();

    public void Dispose() => yard.Dispose();

    [Fact]
    public async Task A_plan_is_written_with_all_its_files_and_told_in_text_and_json()
    {
        string order = yard.Write("small.order.yaml", Order);

        Words.Answer text = await Words.Run("order", "plan", order, "-o", yard.In("out"));
        SortedDictionary<string, string> first = SmallYard.Hashes(yard.In("out"));
        Words.Answer json = await Words.Run("order", "plan", order, "-o", yard.In("out"), "--json", "--quiet");

        Assert.Equal((0, 0), (text.Code, json.Code));
        Assert.Equal(
            ["small/crew.ics", "small/layouts/small-001.svg", "small/layouts/small-002.svg", "small/layouts/small-003.svg", "small/materials.csv", "small/plan.csv", "small/plan.json", "small/plan.svg"],
            first.Keys);
        Assert.Equal(first, SmallYard.Hashes(yard.In("out")));
        Assert.Contains("Small order: 3 units in 3 bins (fewest bins, proved)", text.Output, StringComparison.Ordinal);
        Assert.Contains("optimal, no plan with these bins is done earlier; no unit is late", text.Output, StringComparison.Ordinal);
        Repository.AssertValid("plan.schema.json", json.Output);
        string file = await File.ReadAllTextAsync(yard.In("out", "small", "plan.json"));
        Repository.AssertValid("plan.schema.json", file);
        Assert.Equal(JsonNode.Parse(file)!["bins"]!.ToJsonString(), JsonNode.Parse(json.Output)!["bins"]!.ToJsonString());
    }

    [Fact]
    public async Task Drawings_of_an_older_plan_are_taken_away()
    {
        string order = yard.Write("small.order.yaml", Order);
        Assert.Equal(0, (await Words.Run("order", "plan", order, "-o", yard.In("out"))).Code);

        yard.Write("small.order.yaml", Order.Replace("quantity: 3", "quantity: 1", StringComparison.Ordinal));
        Assert.Equal(0, (await Words.Run("order", "plan", order, "-o", yard.In("out"))).Code);

        Assert.Equal(["small-001.svg"], Directory.EnumerateFiles(yard.In("out", "small", "layouts")).Select(Path.GetFileName));
    }

    [Fact]
    public async Task An_order_that_cannot_be_done_ends_with_1_and_names_what_binds()
    {
        string order = yard.Write("small.order.yaml", Order.Replace("due: 2027-03-31", "due: 2027-03-05", StringComparison.Ordinal).Replace("count: 5", "count: 1", StringComparison.Ordinal));

        Words.Answer answer = await Words.Run("order", "plan", order, "-o", yard.In("out"), "--json");

        Assert.Equal(1, answer.Code);
        Repository.AssertValid("plan.schema.json", answer.Output);
        JsonArray findings = JsonNode.Parse(answer.Output)!["findings"]!.AsArray();
        JsonNode binds = findings.Single(finding => (string?)finding!["code"] == "DW7006")!;
        Assert.Equal(("bins.count", 9, 15), ((string)binds["key"]!, (int)binds["line"]!, (int)binds["column"]!));
        // All units stand in the plan all the same, to see where the time goes.
        Assert.True(File.Exists(yard.In("out", "small", "plan.json")));
    }

    [Fact]
    public async Task Faults_of_the_descriptions_end_with_2_and_nothing_is_written()
    {
        string order = yard.Write("small.order.yaml", Order.Replace("small.unit.yaml", "smal.unit.yaml", StringComparison.Ordinal));

        Words.Answer answer = await Words.Run("order", "plan", order, "-o", yard.In("out"));

        Assert.Equal(2, answer.Code);
        Assert.Contains($"{order}:7:12: error DW8001", answer.Output, StringComparison.Ordinal);
        Assert.False(Directory.Exists(yard.In("out")));
        Assert.Equal(2, (await Words.Run("order", "plan", yard.In("none.order.yaml"), "-o", yard.In("out"))).Code);
    }

    [Fact]
    public async Task A_file_in_the_place_of_the_folder_ends_with_73()
    {
        string order = yard.Write("small.order.yaml", Order);

        Assert.Equal(73, (await Words.Run("order", "plan", order, "-o", yard.Write("out", "a file"))).Code);
    }
}
