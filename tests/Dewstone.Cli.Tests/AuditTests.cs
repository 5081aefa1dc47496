using System.Diagnostics;

namespace Dewstone.Cli.Tests;

/// <summary>
/// The policy on security advisories, with a dotnet that tells of invented ones. The form of its lines is that of a real restore against a package source
/// that served such advisories, seen with SDK 10.0.401.
/// </summary>
public sealed class AuditTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("dewstone-audit-").FullName;

    [Theory]
    [InlineData("src/Dewstone.Cli", "high", "", 1, "error: Pack 1.0.0, high, https://example.org/A-1")]
    [InlineData("src/Dewstone.Cli", "critical", "", 1, "error: Pack 1.0.0, critical, https://example.org/A-1")]
    [InlineData("src/Dewstone.Cli", "moderate", "", 0, "warning: Pack 1.0.0, moderate, https://example.org/A-1")]
    [InlineData("src/Dewstone.Cli", "low", "", 0, "warning: Pack 1.0.0, low, https://example.org/A-1")]
    [InlineData("tests/Dewstone.Cli.Tests", "critical", "", 0, "warning: Pack 1.0.0, critical, https://example.org/A-1 (tests and benchmarks only)")]
    [InlineData("src/Dewstone.Cli", "high", "https://example.org/A-1 9999-12-31 not reached", 0, "accepted until 9999-12-31: Pack 1.0.0, high, https://example.org/A-1")]
    [InlineData("src/Dewstone.Cli", "high", "https://example.org/A-1 2020-01-01 not reached", 1, "error: Pack 1.0.0, high, https://example.org/A-1 (accepted until 2020-01-01, which is over)")]
    [InlineData("src/Dewstone.Cli", "high", "https://example.org/A-2 9999-12-31 another", 1, "error: Pack 1.0.0, high, https://example.org/A-1")]
    public async Task Advisory_fails_or_warns_by_what_ships_its_severity_and_what_is_accepted(string project, string severity, string accepted, int code, string line)
    {
        (int ended, string said) = await AuditAsync($"{project}/Some.csproj : warning NU1903: Package 'Pack' 1.0.0 has a known {severity} severity vulnerability, https://example.org/A-1", accepted);
        Assert.Equal(code, ended);
        Assert.Contains(line, said.Split('\n'));
    }

    [Fact]
    public async Task No_advisory_passes_and_says_that_a_source_without_them_proves_nothing()
    {
        (int ended, string said) = await AuditAsync("Determining projects to restore...", "");
        Assert.Equal(0, ended);
        Assert.Contains("proves nothing", said, StringComparison.Ordinal);
        Assert.DoesNotContain("warning:", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Accepted_advisories_of_the_repository_have_a_day_and_a_reason() => Assert.All(
        File.ReadLines(Repository.Path(".build", "accepted-advisories.txt")).Where(line => line.Length > 0 && line[0] != '#'),
        line => Assert.Matches(@"^https://\S+ [0-9]{4}-[0-9]{2}-[0-9]{2} \S", line));

    public void Dispose() => Directory.Delete(folder, recursive: true);

    /// <summary>Runs the door's audit in a checkout of nothing but the door, with a dotnet that prints one line at a restore.</summary>
    private async Task<(int Code, string Said)> AuditAsync(string restore, string accepted)
    {
        Assert.SkipUnless(File.Exists("/bin/bash"), "no bash");
        File.Copy(Repository.Path("build.sh"), Path.Combine(folder, "build.sh"));
        Directory.CreateDirectory(Path.Combine(folder, ".build"));
        await File.WriteAllTextAsync(Path.Combine(folder, ".build", "accepted-advisories.txt"), $"# address, last day, why\n{accepted}\n");
        string dotnet = Path.Combine(folder, "dotnet");
        await File.WriteAllTextAsync(dotnet, $"#!/bin/sh\ncase \"$1\" in --list-sdks) echo '10.0.401 [/x]' ;; restore) echo \"{folder}/{restore}\" ;; esac\n");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(dotnet, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }

        ProcessStartInfo start = new("/bin/bash", [Path.Combine(folder, "build.sh"), "audit"]) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        start.Environment["PATH"] = $"{folder}:{Environment.GetEnvironmentVariable("PATH")}";
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(), error = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        return (process.ExitCode, await output + await error);
    }
}
