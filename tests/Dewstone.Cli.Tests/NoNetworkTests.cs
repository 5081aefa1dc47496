using System.Diagnostics;
using Dewstone.Tests;

namespace Dewstone.Cli.Tests;

/// <summary>The real program in a network of its own that leads nowhere, not even to this machine.</summary>
public sealed class NoNetworkTests
{
    [Fact]
    public async Task Compile_and_verify_need_no_network()
    {
        using SmallYard yard = new();
        await RunAsync("compile", yard.UnitFile, "-o", yard.In("out"), "--cells", "4", "--quiet");
        await RunAsync("verify", yard.In("out", "small.job"), "--quiet");
        Words.Answer here = await Words.Run("compile", yard.UnitFile, "-o", yard.In("here"), "--cells", "4", "--quiet");
        Assert.Equal(ExitCode.Done, here.Code);
        Assert.Equal(SmallYard.Hashes(yard.In("here")), SmallYard.Hashes(yard.In("out")));
    }

    [Fact]
    public async Task Order_is_planned_without_a_network()
    {
        using TinyOrder order = new(3);
        await RunAsync("order", "plan", order.File, "-o", order.In("out"), "--quiet");
        Assert.True(File.Exists(order.In("out", "tiny", "plan.json")));
    }

    private static async Task RunAsync(params string[] words)
    {
        (int code, string said) = await UnshareAsync("dotnet", [Path.Combine(AppContext.BaseDirectory, "dewstone.dll"), .. words]);
        Assert.True(code == ExitCode.Done, said);
    }

    private static async Task<(int Code, string Said)> UnshareAsync(string program, params string[] words)
    {
        Assert.SkipUnless(File.Exists("/usr/bin/unshare"), "no unshare(1)");
        ProcessStartInfo start = new("/usr/bin/unshare", ["--map-root-user", "--net", program, .. words]) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(), error = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        string said = await output + await error;
        Assert.SkipWhen(said.StartsWith("unshare:", StringComparison.Ordinal), said.Trim());
        return (process.ExitCode, said);
    }
}
