using System.Diagnostics;
using Dewstone.Compute.Numerics;

namespace Dewstone.Cli.Tests.Faults;

/// <summary>What others do while the program runs: write the same job, take its folder away, kill it.</summary>
public sealed class MeanwhileTests(ITestOutputHelper output) : IDisposable
{
    private readonly SmallYard yard = new();

    private string[] Words1 => ["compile", yard.UnitFile, "-o", yard.In("out"), "--cells", "4", "--quiet"];

    public void Dispose() => yard.Dispose();

    [Fact]
    public async Task Two_programs_that_write_one_job_leave_one_whole_job()
    {
        Words.Answer alone = await Words.Run("compile", yard.UnitFile, "-o", yard.In("alone"), "--cells", "4", "--quiet");
        Assert.Equal(ExitCode.Done, alone.Code);
        Words.Answer[] both = await Task.WhenAll(RealProgram.RunAsync([], Words1), RealProgram.RunAsync([], Words1));
        Assert.All(both, answer => Assert.True(answer.Code == ExitCode.Done, answer.Output + answer.Error));
        Assert.Equal(SmallYard.Hashes(yard.In("alone")), SmallYard.Hashes(yard.In("out")));
        Assert.Equal(["small.job"], Directory.EnumerateFileSystemEntries(yard.In("out")).Select(Path.GetFileName));
    }

    [Fact]
    public async Task Folder_that_vanishes_while_it_is_filled_is_told_and_nothing_is_left()
    {
        using Process process = RealProgram.Start([], Words1);
        Task<string> said = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken), complained = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        bool isTaken = false;
        while (!process.HasExited && !isTaken)
        {
            isTaken = Directory.Exists(yard.In("out")) && Directory.EnumerateFiles(yard.In("out"), "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None, IgnoreInaccessible = true }).Any();
        }

        Directory.Move(yard.In("out"), yard.In("gone"));
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        string all = await said + await complained;
        Assert.True(process.ExitCode is ExitCode.TryAgain or ExitCode.CannotCreate || (process.ExitCode == ExitCode.Done && File.Exists(yard.In("gone", "small.job", "manifest.json"))), $"{process.ExitCode} {all}");
        Assert.DoesNotContain("   at ", all, StringComparison.Ordinal);
        Assert.False(File.Exists(yard.In("out", "small.job")));
    }

    [Fact]
    public Task Killed_at_four_moments_it_loses_nothing() => Killed(4);

    [Fact]
    [Trait("Category", "Soak")]
    public Task Killed_at_a_hundred_moments_it_loses_nothing() => Killed(100);

    private async Task Killed(int moments)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() || OperatingSystem.IsMacOS(), "the process is killed with SIGKILL");
        Stopwatch clock = Stopwatch.StartNew();
        Words.Answer first = await RealProgram.RunAsync([], Words1);
        TimeSpan length = clock.Elapsed;
        Assert.Equal(ExitCode.Done, first.Code);
        SortedDictionary<string, string> before = SmallYard.Hashes(yard.In("out", "small.job"));
        for (int moment = 0; moment < moments; moment++)
        {
            // Most of them late, where the folders change.
            double share = 1.0 - 0.6 * SplitMix64.Fraction(SplitMix64.Output(8, (ulong)moment));
            using Process process = RealProgram.Start([], Words1);
            process.BeginOutputReadLine();
            process.BeginErrorReadLine();
            await Task.Delay(length * share, TestContext.Current.CancellationToken);
            process.Kill();
            await process.WaitForExitAsync(TestContext.Current.CancellationToken);
            Words.Answer verified = await Words.Run("verify", yard.In("out", "small.job"), "--quiet");
            output.WriteLine($"moment {moment}: {share:0.000} of {length.TotalSeconds:0.0} s, {string.Join(' ', Directory.EnumerateFileSystemEntries(yard.In("out")).Select(Path.GetFileName))}");
            Assert.True(verified.Code == ExitCode.Done, verified.Output + verified.Error);
            Assert.Equal(before, SmallYard.Hashes(yard.In("out", "small.job")));
        }
    }
}
