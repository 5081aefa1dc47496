using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Orders.Batches;
using Dewstone.Orders.Gathering;
using Dewstone.Orders.Listing;

namespace Dewstone.Orders.Tests.Gathering;

public sealed class OrderGathererTests
{
    private const string Sea = "transport: {payload: 2500 kg, deck: 4 places, stack: 1}\nsite_plan: {anchor: [41.5 N, 30.2 W], heading: 40 deg, spacing: 3 m, rows: 2}\n";

    // Four bins of 1,000 kg of mix, 124 L of water, 45.50 EUR and 2 h: added up by hand. Two bins a night, the second begun after midnight.
    [Fact]
    public void Complete_order_is_gathered_with_totals_by_night_and_for_the_order()
    {
        using SampleFolder sample = new(keys: Sea);

        GatherResult result = Gather(sample);

        Assert.DoesNotContain(result.Findings, finding => finding.Severity == Severity.Error);
        Assert.Equal(
            """
            night,bins,units,mix_spread_kg,mix_hardened_kg,mix_reusable_kg,binder_kg,water_l,flush_l,co2_kg,cost,currency,hours
            2027-03-01,2,4,2000,1200,600,300,240,8,260,91.00,EUR,4
            2027-03-02,2,4,2000,1200,600,300,240,8,260,91.00,EUR,4
            order,4,8,4000,2400,1200,600,480,16,520,182.00,EUR,8

            """.ReplaceLineEndings("\n"),
            Encoding.UTF8.GetString(sample.Files()["nights.csv"]));
        string overview = Encoding.UTF8.GetString(sample.Files()["overview.html"]);
        Assert.All(sample.Reading.Order!.Units, line => Assert.Contains($"{line.Mark}-001", overview, StringComparison.Ordinal));
        Assert.Contains("href=\"bins/yard-004.job/report.html\"", overview, StringComparison.Ordinal);
    }

    // Each bin is dug out 60 h after its print; units that may be lifted at 6.25 d need 150 h, of 2.5 d exactly 60 h.
    [Theory]
    [InlineData("6.25", "2.5", "3 of 4 bins", "yard-002")]
    [InlineData("6.25", "6.25", "all bins", "yard-001")]
    [InlineData("2.5", "2.5", null, null)]
    public void Overview_says_when_bins_are_dug_out_before_their_units_can_be_lifted(string days, string ofTheFirst, string? bins, string? first)
    {
        using SampleFolder sample = new();
        foreach (string file in Directory.EnumerateFiles(sample.In("units")))
        {
            string text = File.ReadAllText(file), own = text.Contains("\"yard-001\"", StringComparison.Ordinal) ? ofTheFirst : days;
            File.WriteAllText(file, text.Replace("\"lift_days\": 2.5", $"\"lift_days\": {own}", StringComparison.Ordinal));
        }

        IReadOnlyList<Diagnostic> findings = Gather(sample).Findings;

        Assert.Equal(bins is not null, findings.Any(finding => finding.Code == "DW7063" && finding.Message.StartsWith($"the plan digs out {bins} before ", StringComparison.Ordinal) && finding.Message.EndsWith($" first {first}", StringComparison.Ordinal)));
        string overview = Encoding.UTF8.GetString(sample.Files()["overview.html"]);
        Assert.Equal(bins is not null, overview.Contains(">set_before_dig: 150 h</code>", StringComparison.Ordinal));
        Assert.Equal(bins is not null, overview.Contains($"The plan digs out {bins} before all their units are strong enough to be lifted, first <span class=\"whole\">{first}</span>:", StringComparison.Ordinal));
    }

    [Fact]
    public void Labels_of_all_bins_stand_on_one_page_in_the_order_of_the_plan()
    {
        using SampleFolder sample = new();
        Gather(sample);

        Assert.Contains(
            "<main><article>yard-001</article><article>yard-002</article><article>yard-003</article><article>yard-004</article></main>",
            Encoding.UTF8.GetString(sample.Files()["labels.html"]), StringComparison.Ordinal);
    }

    [Fact]
    public void Manifest_holds_the_hash_of_every_file_of_the_order_and_of_nothing_else()
    {
        using SampleFolder sample = new(keys: Sea);
        Gather(sample);

        SortedDictionary<string, byte[]> files = sample.Files();
        using JsonDocument manifest = JsonDocument.Parse(files["manifest.json"]);
        (string, string)[] listed = [.. manifest.RootElement.GetProperty("files").EnumerateArray().Select(file => (file.GetProperty("path").GetString()!, file.GetProperty("sha256").GetString()!))];
        (string, string)[] expected =
        [
            .. files.Where(file => file.Key != "manifest.json" && !file.Key.StartsWith("tasks/", StringComparison.Ordinal) && (!file.Key.Contains(".job/", StringComparison.Ordinal) || file.Key.EndsWith("manifest.json", StringComparison.Ordinal)))
                .Select(file => (file.Key, Convert.ToHexStringLower(SHA256.HashData(file.Value)))),
        ];

        Assert.Equal(expected, listed);
        Assert.Equal(4000.0, manifest.RootElement.GetProperty("totals").GetProperty("mix_spread_kg").GetDouble());
    }

    [Fact]
    public void Gathering_again_changes_no_byte_and_split_of_tasks_leaves_no_trace()
    {
        using SampleFolder sample = new(tasks: 4), other = new(tasks: 1);
        Gather(sample);
        SortedDictionary<string, byte[]> first = sample.Files();
        Gather(sample);
        Gather(other);

        Assert.Equal(first, sample.Files());
        Assert.Equal(first["manifest.json"], other.Files()["manifest.json"]);
        Assert.Equal(first["overview.html"], other.Files()["overview.html"]);
    }

    // Bins 1 to 4 are of like cost and went to tasks 0 to 3 of four.
    [Fact]
    public void Missing_bin_names_its_task_and_nothing_is_written()
    {
        using SampleFolder sample = new();
        File.Delete(sample.In("bins/yard-003.json"));
        File.Delete(sample.In("bins/yard-004.json"));
        File.Delete(sample.In("units/WB-005.json"));
        SortedDictionary<string, byte[]> before = sample.Files();

        GatherResult result = Gather(sample);

        Assert.Null(result.Order);
        Assert.Equal(before, sample.Files());
        Assert.Equal([new MissingTasks(4, "2-3")], result.Contents.Tasks);
        Assert.Equal(
            [("DW7050", "1 unit has no record yet: WB-005"), ("DW7050", "2 bins have no job yet: yard-003, yard-004")],
            result.Findings.Select(finding => (finding.Code, finding.Message)));
        Assert.All(result.Findings, finding => Assert.Equal("run again tasks 2-3 of 4", finding.Remedy));
    }

    [Theory]
    [InlineData("bins/yard-002.job/doses/layer-001.csv", "layer\n2\n")]
    [InlineData("bins/yard-002.job/report.html", null)]
    [InlineData("bins/yard-002.job/manifest.json", "{}")]
    public void Changed_or_missing_file_of_a_bin_is_found(string path, string? text)
    {
        using SampleFolder sample = new();
        if (text is null)
        {
            File.Delete(sample.In(path));
        }
        else
        {
            File.WriteAllText(sample.In(path), text);
        }

        GatherResult result = Gather(sample);

        Assert.Equal([("DW7051", "1 bin is not as it was written: yard-002")], result.Findings.Select(finding => (finding.Code, finding.Message)));
        Assert.Equal([new MissingTasks(4, "1")], result.Contents.Tasks);
        Assert.False(File.Exists(sample.In("manifest.json")));
    }

    [Fact]
    public void Failed_unit_is_named_and_nothing_is_written()
    {
        using SampleFolder sample = new();
        OrderedUnit unit = OrderListing.Of(sample.Order)[1];
        File.WriteAllBytes(sample.In("units/WB-002.json"), RecordJson.Of(SampleFolder.Record(unit, "yard-001", UnitState.Failed), file => file));

        GatherResult result = Gather(sample);

        Assert.Equal([("DW7053", "1 unit failed: WB-002")], result.Findings.Select(finding => (finding.Code, finding.Message)));
        Assert.False(File.Exists(sample.In("manifest.json")));
    }

    [Fact]
    public void Bins_made_from_another_state_of_the_order_are_refused()
    {
        using SampleFolder sample = new();
        string record = sample.In("bins/yard-002.json");
        BinRecord made = RecordJson.ReadBin(File.ReadAllBytes(record))!;
        File.WriteAllBytes(record, RecordJson.Of(made with { Key = new string('0', 64) }, file => file));

        GatherResult result = Gather(sample);

        Assert.Equal([("DW7052", "1 bin was made from another state of the order: yard-002")], result.Findings.Select(finding => (finding.Code, finding.Message)));
    }

    [Fact]
    public void Folder_without_anything_lacks_pin_and_plan_and_stays_away()
    {
        using SampleFolder sample = new();
        Directory.Delete(sample.Folder.Root, recursive: true);

        GatherResult result = Gather(sample);

        Assert.Equal(["DW7050", "DW7050"], result.Findings.Select(finding => finding.Code));
        Assert.False(Directory.Exists(sample.Folder.Root));
    }

    [Fact]
    public void Order_without_sea_is_gathered_with_two_notes()
    {
        using SampleFolder sample = new();

        Assert.Equal(["DW7054", "DW7054"], Gather(sample).Findings.Select(finding => finding.Code));
        Assert.False(File.Exists(sample.In("deployment.csv")));
        Assert.False(File.Exists(sample.In("loads.csv")));
    }

    // The block names the shoal, the step the inner flat: one plan, two sites.
    [Theory]
    [InlineData(500.0, 40, 1, "DW7059")]
    [InlineData(20000.0, 2, 4, "DW7062")]
    [InlineData(20000.0, 40, 1, null)]
    public void Loads_that_cannot_be_or_stand_on_each_other_are_said(double payload, int places, int stack, string? code)
    {
        using SampleFolder sample = new(keys: $"transport: {{payload: {payload} kg, deck: {places} places, stack: {stack}}}\nsite_plan: {{anchor: [41.5 N, 30.2 W], heading: 40 deg, spacing: 3 m, rows: 2}}\n");

        Assert.Equal(code is null ? ["DW7057"] : ["DW7057", code], Gather(sample).Findings.Select(finding => finding.Code));
    }

    [Theory]
    [InlineData("2027-03-01T23:59", "2027-03-01")]
    [InlineData("2027-03-02T00:00", "2027-03-01")]
    [InlineData("2027-03-02T17:59", "2027-03-01")]
    [InlineData("2027-03-02T18:00", "2027-03-02")]
    public void Night_after_midnight_is_that_of_the_evening_before(string moment, string night)
    {
        Shifts shifts = new([DayOfWeek.Monday], new TimeOnly(18, 0), new TimeOnly(6, 0));

        Assert.Equal(DateOnly.Parse(night), PrintNight.DayOf(DateTime.Parse(moment), shifts));
        Assert.Equal(DateOnly.FromDateTime(DateTime.Parse(moment)), PrintNight.DayOf(DateTime.Parse(moment), null));
    }

    private static GatherResult Gather(SampleFolder sample) => new OrderGatherer(sample.Reading, sample.Folder, SampleFolder.Version).Gather(null, TestContext.Current.CancellationToken);
}
