using System.Text.Json;
using Dewstone.Tests;

namespace Dewstone.Cli.Tests.Commands;

public sealed class OrderGatherTests
{
    [Fact]
    public async Task Order_compiled_in_two_tasks_is_gathered_and_says_so()
    {
        using TinyOrder order = new(6);
        order.Edit("tiny.order.yaml", "gap: 50 mm", "gap: 50 mm\ntransport: {payload: 40 kg, deck: 4 places, stack: 1}\nsite_plan: {anchor: [41.5 N, 30.2 W], heading: 40 deg, spacing: 3 m, rows: 2}");
        order.Plan(order.In("out"));
        await Compile(order, 0);

        Words.Answer half = await Gather(order);
        Assert.Equal(ExitCode.No, half.Code);
        Assert.Contains("not complete, nothing written", half.Output, StringComparison.Ordinal);
        Assert.Contains("missing tasks of 2: 1\n", half.Output, StringComparison.Ordinal);
        Assert.False(File.Exists(order.In("out", "tiny", "manifest.json")));

        await Compile(order, 1);
        Words.Answer whole = await Gather(order);
        Assert.True(whole.Code == ExitCode.Done, whole.Output);
        Assert.Contains("Tiny order: complete, 6 units in 3 bins over 1 night\n", whole.Output, StringComparison.Ordinal);
        Assert.All(
            (string[])["manifest.json", "overview.html", "labels.html", "nights.csv", "deployment.csv", "loads.csv", "site-plan.geojson", "site-plan.svg"],
            file => Assert.True(File.Exists(order.In("out", "tiny", file)), file));
        Repository.AssertValid("order-manifest.schema.json", await File.ReadAllTextAsync(order.In("out", "tiny", "manifest.json"), TestContext.Current.CancellationToken));
        string overview = await File.ReadAllTextAsync(order.In("out", "tiny", "overview.html"), TestContext.Current.CancellationToken);
        Assert.All(order.Marks(), mark => Assert.Contains(mark, overview, StringComparison.Ordinal));

        SortedDictionary<string, string> before = TinyOrder.Hashes(order.In("out"));
        Assert.Equal(ExitCode.Done, (await Gather(order)).Code);
        Assert.Equal(before, TinyOrder.Hashes(order.In("out")));
    }

    [Fact]
    public async Task Json_names_what_is_missing_and_what_a_changed_file_belongs_to()
    {
        using TinyOrder order = new(6);
        order.Plan(order.In("out"));
        await Compile(order, 0);
        await Compile(order, 1);
        await File.AppendAllTextAsync(order.In("out", "tiny", "bins", "small-002.job", "doses", "layer-002.csv"), "1\n", TestContext.Current.CancellationToken);

        Words.Answer answer = await Gather(order, "--json");

        Assert.Equal(ExitCode.No, answer.Code);
        Repository.AssertValid("order-gather.schema.json", answer.Output);
        using JsonDocument document = JsonDocument.Parse(answer.Output);
        Assert.False(document.RootElement.GetProperty("complete").GetBoolean());
        Assert.Equal("small-002", Assert.Single(document.RootElement.GetProperty("missing_bins").EnumerateArray()).GetString());
        Assert.Equal("DW7051", document.RootElement.GetProperty("findings")[0].GetProperty("code").GetString());
    }

    [Fact]
    public async Task Json_of_a_complete_order_holds_its_totals()
    {
        using TinyOrder order = new(3);
        order.Plan(order.In("out"));
        await Compile(order, 0, tasks: 1);

        Words.Answer answer = await Gather(order, "--json");

        Assert.True(answer.Code == ExitCode.Done, answer.Output);
        Repository.AssertValid("order-gather.schema.json", answer.Output);
        using JsonDocument document = JsonDocument.Parse(answer.Output);
        Assert.Equal(3, document.RootElement.GetProperty("totals").GetProperty("units").GetInt32());
    }

    [Fact]
    public async Task Order_that_cannot_be_read_is_the_inputs_fault()
    {
        using TinyOrder order = new(3);

        Assert.Equal(ExitCode.InputAtFault, (await Words.Run("order", "gather", order.In("none.order.yaml"), "-o", order.In("out"), "--quiet")).Code);
        Assert.Equal(ExitCode.No, (await Gather(order)).Code);
    }

    private static Task<Words.Answer> Gather(TinyOrder order, params string[] words) => Words.Run(["order", "gather", order.File, "-o", order.In("out"), "--quiet", .. words]);

    private static async Task Compile(TinyOrder order, int task, int tasks = 2)
    {
        Words.Answer answer = await Words.Run("order", "compile", order.File, "-o", order.In("out"), "--cells", "4", "--quiet", "--task", $"{task}", "--of", $"{tasks}");
        Assert.True(answer.Code == ExitCode.Done, answer.Output);
    }
}
