using System.Diagnostics;

namespace Dewstone.Cli.Tests;

public sealed class InterruptTests
{
    [Theory]
    [InlineData("INT", "dosing", ExitCode.Interrupted)]
    [InlineData("INT", "wetting", ExitCode.Interrupted)]
    [InlineData("TERM", "wetting", ExitCode.Terminated)]
    public async Task Signal_leaves_the_older_job_and_nothing_else(string signal, string stage, int code)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() || OperatingSystem.IsMacOS(), "signals are sent with kill(1)");
        using SmallYard yard = new();
        await Words.Run("compile", yard.UnitFile, "-o", yard.In("out"), "--cells", "4", "--quiet");
        SortedDictionary<string, string> before = SmallYard.Hashes(yard.In("out"));

        using Process process = RealProgram.Start([], "compile", yard.UnitFile, "-o", yard.In("out"), "--cells", "16");
        await WaitForAsync(process, stage);
        using (Process kill = Process.Start("kill", [$"-{signal}", process.Id.ToString()]))
        {
            await kill.WaitForExitAsync();
        }

        string said = await process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        Assert.Equal(code, process.ExitCode);
        Assert.Contains("nothing half-written was left", said, StringComparison.Ordinal);
        Assert.Equal(before, SmallYard.Hashes(yard.In("out")));
        Assert.Equal(["small.job"], Directory.EnumerateFileSystemEntries(yard.In("out")).Select(Path.GetFileName));
    }

    [Fact]
    public async Task Killed_process_loses_no_older_job_and_the_next_run_puts_things_right()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() || OperatingSystem.IsMacOS(), "the process is killed with SIGKILL");
        using SmallYard yard = new();
        await Words.Run("compile", yard.UnitFile, "-o", yard.In("out"), "--cells", "4", "--quiet");
        SortedDictionary<string, string> before = SmallYard.Hashes(yard.In("out", "small.job"));
        using Process process = RealProgram.Start([], "compile", yard.UnitFile, "-o", yard.In("out"), "--cells", "4");
        await WaitForAsync(process, "files");
        process.Kill();
        await process.WaitForExitAsync();

        // Wherever it was hit, a complete job stands under the name after the next run, and it is the same job.
        Words.Answer again = await Words.Run("compile", yard.UnitFile, "-o", yard.In("out"), "--cells", "4", "--quiet");
        Assert.True(again.Code == ExitCode.Done, again.Output);
        Assert.Equal(before, SmallYard.Hashes(yard.In("out", "small.job")));
    }

    [Fact]
    public async Task Full_disk_ends_with_75_and_leaves_the_older_job()
    {
        using SmallYard yard = new();
        using TinyDisk? disk = TinyDisk.TryMount(yard.In("disk"), "3m");
        Assert.SkipWhen(disk is null, "a small file system can only be mounted by root on Linux");
        Words.Answer first = await Words.Run("compile", yard.UnitFile, "-o", yard.In("disk"), "--cells", "4", "--quiet");
        Assert.True(first.Code == ExitCode.Done, first.Output);
        SortedDictionary<string, string> before = SmallYard.Hashes(yard.In("disk", "small.job"));
        await File.WriteAllBytesAsync(yard.In("disk", "ballast"), new byte[disk!.FreeBytes - 200_000]);

        Words.Answer full = await Words.Run("compile", yard.UnitFile, "-o", yard.In("disk"), "--cells", "4", "--quiet");
        Assert.Equal(ExitCode.TryAgain, full.Code);
        Assert.Contains("error DW8", full.Output, StringComparison.Ordinal);
        Assert.Equal(before, SmallYard.Hashes(yard.In("disk", "small.job")));
        Assert.Equal(["ballast", "small.job"], Directory.EnumerateFileSystemEntries(yard.In("disk")).Select(Path.GetFileName).Order());
    }

    private static async Task WaitForAsync(Process process, string stage)
    {
        while (await process.StandardError.ReadLineAsync() is { } line)
        {
            if (line.Contains(": " + stage, StringComparison.Ordinal))
            {
                return;
            }
        }

        Assert.Fail($"the program ended before it came to {stage}");
    }
}
