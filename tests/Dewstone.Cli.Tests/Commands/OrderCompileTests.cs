using System.Text.Json;
using Dewstone.Orders.Batches;
using Dewstone.Tests;

namespace Dewstone.Cli.Tests.Commands;

public sealed class OrderCompileTests
{
    [Fact]
    public async Task An_order_compiles_to_the_same_bytes_on_one_thread_two_threads_and_in_two_tasks()
    {
        using TinyOrder order = new(6);
        Words.Answer first = await Compile(order, "one", "--threads", "1");
        Assert.True(first.Code == ExitCode.Done, first.Output);
        Assert.Contains("6 of 6 units solved, 3 of 3 bins ready to print", first.Output, StringComparison.Ordinal);
        SortedDictionary<string, string> done = TinyOrder.Hashes(order.In("one"));
        Assert.Equal(6, done.Keys.Count(path => path.StartsWith("tiny/units/", StringComparison.Ordinal)));
        // The two units of the second line are alike: solved once.
        Assert.Equal(5, done.Keys.Count(path => path.StartsWith("tiny/store/", StringComparison.Ordinal)));

        await Compile(order, "two", "--threads", "2");
        Assert.Equal(done, TinyOrder.Hashes(order.In("two")));

        string third = order.Plan(order.In("tasks"));
        Words.Answer task = await Compile(order, "tasks", "--task", "1", "--of", "2");
        Assert.Equal(ExitCode.Done, task.Code);
        Words.Answer status = await Status(order, "tasks");
        Assert.Equal(ExitCode.No, status.Code);
        Assert.Contains("tasks to run of 2: 0\n", status.Output, StringComparison.Ordinal);
        Environment.SetEnvironmentVariable("DEWSTONE_TEST_TASK", "0");
        Assert.Equal(ExitCode.Done, (await Compile(order, "tasks", "--task-from", "DEWSTONE_TEST_TASK", "--of", "2")).Code);
        Assert.Equal(ExitCode.Done, (await Compile(order, "tasks", "--task", "3", "--of", "4")).Code);
        Directory.Delete(Path.Combine(third, "tasks"), recursive: true);
        Assert.Equal(done, TinyOrder.Hashes(order.In("tasks")));
        Assert.Equal(ExitCode.Done, (await Status(order, "tasks")).Code);

        // Bin jobs are job folders like any other.
        Assert.Equal(ExitCode.Done, (await Words.Run("verify", order.In("one", "tiny", "bins", "small-002.job"), "--quiet")).Code);
    }

    [Fact]
    public async Task Continue_keeps_what_is_done_and_mends_what_is_not()
    {
        using TinyOrder order = new(6);
        await Compile(order, "out");
        SortedDictionary<string, string> done = TinyOrder.Hashes(order.In("out"));
        Damage(order.In("out", "tiny", "bins", "small-001.job", "doses", "layer-002.csv"));
        File.Delete(order.In("out", "tiny", "units", "TA-003.json"));
        Damage(Directory.EnumerateFiles(order.In("out", "tiny", "store"), "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal).First());

        Words.Answer status = await Status(order, "out");
        Assert.Equal(ExitCode.No, status.Code);
        Assert.Contains("2 missing", status.Output, StringComparison.Ordinal);
        Words.Answer again = await Compile(order, "out", "--continue");

        Assert.True(again.Code == ExitCode.Done, again.Output);
        Assert.Contains("(1 done before)", again.Output, StringComparison.Ordinal);
        Words.Answer third = await Compile(order, "out", "--continue");
        Assert.Contains("(3 done before)", third.Output, StringComparison.Ordinal);
        // Whether the damaged entry was met depends on whose it is; without --continue every one is.
        await Compile(order, "out");
        Assert.Equal(done, TinyOrder.Hashes(order.In("out")));
    }

    [Theory]
    [InlineData("tiny.order.yaml", "due: 2027-06-30", "due: 2027-07-01", "DW7030")]
    [InlineData("small.mix.yaml", "1700 kg/m3", "1690 kg/m3", "DW7031")]
    [InlineData("tiny.unit.yaml", "12 mm", "11 mm", "DW7031")]
    public async Task A_folder_begun_with_another_state_of_the_order_is_refused_and_left_as_it_was(string file, string from, string to, string code)
    {
        using TinyOrder order = new(3);
        await Compile(order, "out");
        SortedDictionary<string, string> done = TinyOrder.Hashes(order.In("out"));
        order.Edit(file, from, to);

        Words.Answer refused = await Words.Run("order", "compile", order.File, "-o", order.In("out"), "--cells", "4", "--quiet", "--continue", "--task", "0", "--of", "2");

        Assert.Equal(ExitCode.InputAtFault, refused.Code);
        Assert.Contains(code, refused.Output, StringComparison.Ordinal);
        Assert.Equal(done, TinyOrder.Hashes(order.In("out")));
        Words.Answer status = await Status(order, "out");
        Assert.NotEqual(ExitCode.Done, status.Code);
        Assert.Contains(code == "DW7030" ? "DW7011" : "2 stale", status.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Other_cells_and_a_plan_that_does_not_fit_are_refused()
    {
        using TinyOrder order = new(3);
        await Compile(order, "out");
        Words.Answer cells = await Words.Run("order", "compile", order.File, "-o", order.In("out"), "--cells", "6", "--quiet");
        Assert.Equal(ExitCode.InputAtFault, cells.Code);
        Assert.Contains("DW7032", cells.Output, StringComparison.Ordinal);

        string plan = Path.Combine(order.Plan(order.In("other")), "plan.json");
        await File.WriteAllTextAsync(plan, (await File.ReadAllTextAsync(plan)).Replace("TB-001", "TB-009", StringComparison.Ordinal));
        Words.Answer unfit = await Words.Run("order", "compile", order.File, "-o", order.In("other"), "--cells", "4", "--quiet");
        Assert.Equal(ExitCode.InputAtFault, unfit.Code);
        Assert.Contains("DW7036", unfit.Output, StringComparison.Ordinal);
        Assert.False(File.Exists(order.In("other", "tiny", "order.json")));
    }

    [Fact]
    public async Task Draws_that_fail_are_replaced_and_a_unit_without_a_good_draw_does_not_stop_the_rest()
    {
        using TinyOrder order = new(6);
        await Compile(order, "free");
        Dictionary<string, double> masses = order.Marks().ToDictionary(mark => mark, mark => Record(order, "free", mark).Figures!.LiftKilograms);
        string[] varied = [.. masses.Keys.Where(mark => mark.StartsWith("TA", StringComparison.Ordinal)).OrderBy(mark => masses[mark])];
        double limit = (masses[varied[1]] + masses[varied[2]]) / 2.0;
        order.Edit("tiny.unit.yaml", "require:", FormattableString.Invariant($"require:\n  mass: {{max: {limit:0.000000} kg}}"));

        order.WriteOrder(4, 2, redraw: 0);
        Words.Answer strict = await Compile(order, "strict", "--json");
        Assert.Equal(ExitCode.No, strict.Code);
        Repository.AssertValid("order-compile.schema.json", strict.Output);
        foreach (string mark in masses.Keys)
        {
            UnitRecord record = Record(order, "strict", mark);
            bool good = masses[mark] <= limit;
            Assert.Equal((good ? UnitState.Solved : UnitState.Failed, good ? 0 : 1), (record.State, record.ExitCode));
            Assert.Equal(good, record.Figures is not null);
        }

        using (JsonDocument said = JsonDocument.Parse(strict.Output))
        {
            JsonElement[] findings = [.. said.RootElement.GetProperty("findings").EnumerateArray()];
            Assert.Equal(masses.Values.Count(mass => mass > limit), findings.Count(finding => finding.GetProperty("code").GetString() == "DW7033"));
            Assert.All(findings.Where(finding => finding.GetProperty("code").GetString() == "DW7033"), finding => Assert.InRange(finding.GetProperty("line").GetInt32(), 7, 8));
            foreach (JsonElement bin in said.RootElement.GetProperty("bins").EnumerateArray())
            {
                int solved = bin.GetProperty("units").EnumerateArray().Count(unit => unit.GetProperty("state").GetString() == "solved");
                Assert.Equal(solved == 0 ? "no job" : "ready", bin.GetProperty("state").GetString());
                Assert.Equal(solved > 0, Directory.Exists(order.In("strict", "tiny", "bins", bin.GetProperty("name").GetString() + ".job")));
                Assert.Equal(solved < 2, findings.Any(finding => finding.GetProperty("code").GetString() == "DW7035" && finding.GetProperty("message").GetString()!.StartsWith(bin.GetProperty("name").GetString()!, StringComparison.Ordinal)));
            }
        }

        Words.Answer status = await Status(order, "strict", "--json");
        Assert.Equal(ExitCode.No, status.Code);
        Repository.AssertValid("status.schema.json", status.Output);
        Assert.Contains("\"failed\"", status.Output, StringComparison.Ordinal);

        order.WriteOrder(4, 2, redraw: 9);
        Words.Answer lax = await Words.Run("order", "compile", Planned(order, "lax"), "-o", order.In("lax"), "--cells", "4");
        Assert.Contains("note DW7034: ", lax.Output, StringComparison.Ordinal);
        UnitRecord redrawn = Record(order, "lax", varied[3]);
        Assert.True(redrawn.Draws.Count > 1);
        Assert.False(redrawn.Draws[0].Passed);
        Assert.NotEmpty(redrawn.Draws[0].Errors);
        Assert.Equal(UnitState.Solved, redrawn.State);
        Assert.True(redrawn.Figures!.LiftKilograms <= limit);
        Assert.Equal(redrawn.Draws.Count, redrawn.Draws.Select(draw => draw.Seeds[0].Seed).Distinct().Count());
        Assert.Equal(Enumerable.Range(0, redrawn.Draws.Count), redrawn.Draws.Select(draw => draw.Draw));
    }

    [Fact]
    public async Task An_order_without_a_plan_is_planned_and_goes_on_by_that_plan()
    {
        using TinyOrder order = new(3);
        string[] words = ["order", "compile", order.File, "-o", order.In("out"), "--cells", "4", "--quiet"];
        Words.Answer first = await Words.Run(words);
        Assert.True(first.Code == ExitCode.Done, first.Output);
        SortedDictionary<string, string> done = TinyOrder.Hashes(order.In("out"));
        Assert.Contains("tiny/plan.json", done.Keys);

        Directory.Delete(order.In("out", "tiny", "bins"), recursive: true);
        Assert.Equal(ExitCode.Done, (await Words.Run([.. words, "--continue"])).Code);
        Assert.Equal(done, TinyOrder.Hashes(order.In("out")));
    }

    [Fact]
    public async Task Fifty_tiny_units_compile()
    {
        using TinyOrder order = new(50);
        Words.Answer answer = await Compile(order, "out");
        Assert.True(answer.Code == ExitCode.Done, answer.Output);
        Assert.Contains("50 of 50 units solved, 25 of 25 bins ready to print", answer.Output, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, (await Status(order, "out")).Code);
    }

    [Theory]
    [InlineData("--task", "2", "--of", "2")]
    [InlineData("--task", "0")]
    [InlineData("--of", "2")]
    [InlineData("--task-from", "DEWSTONE_TEST_UNSET", "--of", "2")]
    [InlineData("--task", "0", "--task-from", "DEWSTONE_TEST_UNSET", "--of", "2")]
    public async Task A_task_that_is_none_is_a_fault_of_the_words(params string[] words)
    {
        using TinyOrder order = new(3);
        Words.Answer answer = await Words.Run(["order", "compile", order.File, "-o", order.In("out"), .. words]);
        Assert.Equal(ExitCode.InputAtFault, answer.Code);
        Assert.False(Directory.Exists(order.In("out")));
    }

    [Fact]
    public async Task A_path_that_is_no_folder_ends_with_73_and_one_that_is_full_with_75()
    {
        using TinyOrder order = new(3);
        await File.WriteAllTextAsync(order.In("out"), "a file");
        Words.Answer answer = await Words.Run("order", "compile", order.File, "-o", order.In("out"), "--cells", "4", "--quiet");
        Assert.Equal(ExitCode.CannotCreate, answer.Code);

        using TinyDisk? disk = TinyDisk.TryMount(order.In("disk"), "1m");
        Assert.SkipWhen(disk is null, "a small file system can only be mounted by root on Linux");
        order.Plan(order.In("disk"));
        await File.WriteAllBytesAsync(order.In("disk", "ballast"), new byte[disk!.FreeBytes - 60_000]);
        Words.Answer full = await Words.Run("order", "compile", order.File, "-o", order.In("disk"), "--cells", "4", "--quiet");
        Assert.Equal(ExitCode.TryAgain, full.Code);
        File.Delete(order.In("disk", "ballast"));
        Words.Answer again = await Words.Run("order", "compile", order.File, "-o", order.In("disk"), "--cells", "4", "--quiet", "--continue");
        Assert.True(again.Code == ExitCode.Done, again.Output);
        await Compile(order, "whole");
        Assert.Equal(TinyOrder.Hashes(order.In("whole", "tiny")), TinyOrder.Hashes(order.In("disk", "tiny")));
    }

    private static string Planned(TinyOrder order, string output)
    {
        order.Plan(order.In(output));
        return order.File;
    }

    internal static async Task<Words.Answer> Compile(TinyOrder order, string output, params string[] words)
    {
        order.Plan(order.In(output));
        return await Words.Run(["order", "compile", order.File, "-o", order.In(output), "--cells", "4", "--quiet", .. words]);
    }

    private static async Task<Words.Answer> Status(TinyOrder order, string output, params string[] words) =>
        await Words.Run(["order", "status", order.File, "-o", order.In(output), .. words]);

    private static UnitRecord Record(TinyOrder order, string output, string mark) =>
        RecordJson.ReadUnit(File.ReadAllBytes(order.In(output, "tiny", "units", mark + ".json")))!;

    private static void Damage(string file)
    {
        byte[] bytes = File.ReadAllBytes(file);
        bytes[bytes.Length / 2] ^= 1;
        File.WriteAllBytes(file, bytes);
    }
}
