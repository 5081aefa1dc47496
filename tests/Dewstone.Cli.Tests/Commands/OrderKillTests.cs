using System.Diagnostics;
using Dewstone.Compute.Numerics;
using Dewstone.Tests;

namespace Dewstone.Cli.Tests.Commands;

/// <summary>A run that is killed and continued ends with the bytes of an undisturbed one.</summary>
public sealed class OrderKillTests(ITestOutputHelper output)
{
    private const string Linux = "processes are killed and watched as Linux does it";

    public static TheoryData<string> Points { get; } = ["first entry of the store", "first temporary", "first record of a unit", "first bin job", "last bin job"];

    [Theory]
    [MemberData(nameof(Points))]
    public async Task Killed_at_a_point_and_continued_ends_with_the_same_bytes(string point)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), Linux);
        using TinyOrder order = new(6);
        await OrderCompileTests.Compile(order, "whole");
        string folder = order.Plan(order.In("killed"));

        using Process process = Start(order, "killed");
        bool seen = false;
        while (!seen && !process.HasExited)
        {
            seen = Reached(point, folder);
        }

        process.Kill();
        await process.WaitForExitAsync();
        Assert.True(seen || Reached(point, folder), "the run ended before the point was seen");
        await AssertContinuesAsync(order);
    }

    [Fact]
    public async Task Stopped_by_a_signal_it_leaves_only_whole_files_and_continues()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), Linux);
        using TinyOrder order = new(6);
        await OrderCompileTests.Compile(order, "whole");
        string folder = order.Plan(order.In("killed"));
        using Process process = Start(order, "killed");
        while (!process.HasExited && !Reached("first record of a unit", folder))
        {
            await Task.Delay(1, TestContext.Current.CancellationToken);
        }

        using (Process kill = Process.Start("kill", ["-TERM", process.Id.ToString()]))
        {
            await kill.WaitForExitAsync();
        }

        await process.WaitForExitAsync();
        Assert.Equal(ExitCode.Terminated, process.ExitCode);
        SortedDictionary<string, string> whole = TinyOrder.Hashes(order.In("whole"));
        Assert.All(TinyOrder.Hashes(order.In("killed")), file => Assert.Equal(whole[file.Key], file.Value));
        await AssertContinuesAsync(order);
    }

    [Fact]
    [Trait("Category", "Soak")]
    public async Task Killed_at_twenty_moments_and_continued_ends_with_the_same_bytes()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), Linux);
        using TinyOrder order = new(24);
        order.Plan(order.In("whole"));
        Stopwatch clock = Stopwatch.StartNew();
        using (Process undisturbed = Start(order, "whole"))
        {
            await undisturbed.WaitForExitAsync();
        }

        TimeSpan length = clock.Elapsed;
        for (int moment = 0; moment < 20; moment++)
        {
            if (Directory.Exists(order.In("killed")))
            {
                Directory.Delete(order.In("killed"), recursive: true);
            }

            order.Plan(order.In("killed"));
            double share = SplitMix64.Fraction(SplitMix64.Output(20, (ulong)moment));
            using Process process = Start(order, "killed");
            await Task.Delay(length * share, TestContext.Current.CancellationToken);
            process.Kill();
            await process.WaitForExitAsync();
            output.WriteLine($"moment {moment}: {share:0.000} of {length.TotalSeconds:0.0} s, {TinyOrder.Hashes(order.In("killed")).Count} files");
            await AssertContinuesAsync(order);
        }
    }

    private static Process Start(TinyOrder order, string folder)
    {
        Process process = RealProgram.Start([], "order", "compile", order.File, "-o", order.In(folder), "--cells", "4", "--quiet", "--threads", "2");
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
        return process;
    }

    private static bool Reached(string point, string folder)
    {
        string[] paths = Directory.Exists(folder) ? [.. Entries(folder)] : [];
        bool Any(string part, string ending) => paths.Any(path => path.StartsWith(part, StringComparison.Ordinal) && path.EndsWith(ending, StringComparison.Ordinal) && !path.Contains("/.", StringComparison.Ordinal));
        return point switch
        {
            "first entry of the store" => Any("store/", ".unit"),
            "first temporary" => paths.Any(path => path.Contains(".tmp-", StringComparison.Ordinal)),
            "first record of a unit" => Any("units/", ".json"),
            "first bin job" => Any("bins/", ".job"),
            _ => paths.Count(path => path.StartsWith("bins/small-", StringComparison.Ordinal) && path.EndsWith(".job", StringComparison.Ordinal)) == 3,
        };
    }

    // What stands while others write and rename: a folder may be gone between being listed and being read.
    private static IEnumerable<string> Entries(string folder)
    {
        Queue<string> open = new([folder]);
        while (open.TryDequeue(out string? at))
        {
            string[] found;
            try
            {
                found = Directory.GetFileSystemEntries(at);
            }
            catch (IOException)
            {
                continue;
            }

            foreach (string path in found)
            {
                yield return Path.GetRelativePath(folder, path);
                if (Directory.Exists(path))
                {
                    open.Enqueue(path);
                }
            }
        }
    }

    private static async Task AssertContinuesAsync(TinyOrder order)
    {
        Words.Answer again = await Words.Run("order", "compile", order.File, "-o", order.In("killed"), "--cells", "4", "--quiet", "--continue");
        Assert.True(again.Code == ExitCode.Done, again.Output);
        Assert.Equal(TinyOrder.Hashes(order.In("whole")), TinyOrder.Hashes(order.In("killed")));
    }
}
