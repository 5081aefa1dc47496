using System.Diagnostics;
using Dewstone.Tests;

namespace Dewstone.Cli.Tests.Cluster;

public sealed class ClusterTests
{
    private const int Tasks = 3;

    // Judged by the machine that did all of it alone: 24 units in 12 bins, 3 tasks on two nodes, one of which is lost with the task it runs: that has four bins, and
    // not more than two are done by then.
    [Fact]
    public async Task Order_on_two_nodes_of_which_one_is_lost_halfway_has_the_bytes_of_a_single_machine()
    {
        Assert.SkipWhen(Engine.Absent is not null, Engine.Absent ?? "");
        using TinyOrder order = new(24);
        order.Plan(order.In("one"));
        order.Plan(order.In("many"));
        Assert.Equal(ExitCode.Done, (await Words.Run("order", "compile", order.File, "-o", order.In("one"), "--cells", "4", "--quiet")).Code);
        Assert.Equal(ExitCode.Done, (await Words.Run("order", "gather", order.File, "-o", order.In("one"), "--quiet")).Code);

        using Engine engine = new(nodes: 2, slots: 1);
        engine.Run(Repository.Path("examples", "wrackline-bay", "cluster", "submit.sh"), [order.File, order.In("many"), $"{Tasks}", "--cells", "4"]);
        await Until(() => Bins(order) >= 2 && engine.Run("squeue", ["-h", "-t", "R", "-w", "n2"]).Length > 0, order);
        engine.Lose("n2");
        int done = Bins(order);
        await Until(() => File.Exists(order.In("many", "tiny", "manifest.json")), order);

        Assert.InRange(done, 2, 11);
        Assert.Contains("due to failure of node n2", engine.Log, StringComparison.Ordinal);
        Assert.Equal(Results(order.In("one")), Results(order.In("many")));
    }

    // Here the plan is made on the way: by `order compile` alone on one side, by `order plan` before the tasks on the other.
    [Fact]
    public async Task Order_run_by_parallel_processes_has_the_bytes_of_a_single_machine()
    {
        Assert.SkipUnless(File.Exists("/usr/bin/parallel"), "not installed: parallel");
        using TinyOrder order = new(6);
        Assert.Equal(ExitCode.Done, (await Words.Run("order", "compile", order.File, "-o", order.In("one"), "--cells", "4", "--quiet")).Code);
        Assert.Equal(ExitCode.Done, (await Words.Run("order", "gather", order.File, "-o", order.In("one"), "--quiet")).Code);

        ProcessStartInfo start = new(Repository.Path("examples", "wrackline-bay", "cluster", "parallel.sh"), [order.File, order.In("many"), "3", "--cells", "4"]) { RedirectStandardOutput = true, UseShellExecute = false };
        start.Environment["DEWSTONE"] = Path.Combine(AppContext.BaseDirectory, "dewstone");
        start.Environment["JOBS"] = "2";
        using Process process = Process.Start(start)!;
        string said = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);

        Assert.True(process.ExitCode == ExitCode.Done, said);
        Assert.Equal(Results(order.In("one")), Results(order.In("many")));
    }

    private static int Bins(TinyOrder order) => Directory.Exists(order.In("many", "tiny", "bins")) ? Directory.EnumerateFiles(order.In("many", "tiny", "bins"), "small-*.json").Count() : 0;

    // A task's report is the only file that tells how the work was split.
    private static SortedDictionary<string, string> Results(string output)
    {
        SortedDictionary<string, string> files = TinyOrder.Hashes(Path.Combine(output, "tiny"));
        foreach (string report in files.Keys.Where(path => path.StartsWith("tasks/", StringComparison.Ordinal)).ToArray())
        {
            files.Remove(report);
        }

        return files;
    }

    // The queue takes its time: it notices a lost node after tens of seconds. The bound only ends a test that would never end.
    private static async Task Until(Func<bool> reached, TinyOrder order)
    {
        for (int i = 0; i < 3000; i++)
        {
            if (reached())
            {
                return;
            }

            await Task.Delay(100, TestContext.Current.CancellationToken);
        }

        string log = string.Concat(Directory.EnumerateFiles(order.In("many", "tiny.log")).Order(StringComparer.Ordinal).Select(File.ReadAllText));
        Assert.Fail($"not reached; the tasks say:\n{log}");
    }
}
