using System.Diagnostics;
using System.Text.Json;
using System.Xml.Linq;

namespace Dewstone.Architecture.Tests;

/// <summary>Every package is pinned by version and by the hash of its bytes.</summary>
public sealed class LockFileTests
{
    private static readonly string Locks = Path.Combine(Repository.Root, ".build", "locks");

    [Fact]
    public void Every_project_has_a_lock_file_and_no_lock_file_is_left_over() => Assert.Equal(
        new[] { "src", "tests" }.SelectMany(top => Directory.EnumerateFiles(Path.Combine(Repository.Root, top), "*.csproj", SearchOption.AllDirectories))
            .Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal),
        Directory.EnumerateFiles(Locks).Select(path => Path.GetFileName(path).Replace(".lock.json", "", StringComparison.Ordinal)).Order(StringComparer.Ordinal));

    [Fact]
    public void Every_package_is_locked_by_a_hash_and_the_same_in_all_projects()
    {
        Dictionary<string, string> seen = [];
        foreach (string file in Directory.EnumerateFiles(Locks))
        {
            using JsonDocument document = JsonDocument.Parse(File.ReadAllBytes(file));
            foreach (JsonProperty package in document.RootElement.GetProperty("dependencies").EnumerateObject().SelectMany(framework => framework.Value.EnumerateObject())
                .Where(package => package.Value.GetProperty("type").GetString() != "Project"))
            {
                // SHA-512, as NuGet writes it.
                string hash = package.Value.GetProperty("contentHash").GetString()!, resolved = $"{package.Name} {package.Value.GetProperty("resolved").GetString()}";
                Assert.Equal(64, Convert.FromBase64String(hash).Length);
                Assert.True(seen.TryAdd(resolved, hash) || seen[resolved] == hash, $"{resolved} has two hashes");
            }
        }

        Assert.All(
            XDocument.Load(Path.Combine(Repository.Root, ".build", "Directory.Packages.props")).Descendants().Where(e => e.Name.LocalName is "PackageVersion" or "GlobalPackageReference"),
            pinned => Assert.Contains($"{(string)pinned.Attribute("Include")!} {(string)pinned.Attribute("Version")!}", seen.Keys));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Locked_restore_refuses_a_package_of_another_hash(bool changed)
    {
        string folder = Directory.CreateTempSubdirectory("dewstone-lock-").FullName;
        try
        {
            // One character of one hash is another one.
            string text = await File.ReadAllTextAsync(Path.Combine(Locks, "Dewstone.Model.lock.json"), TestContext.Current.CancellationToken);
            int at = text.IndexOf("\"contentHash\": \"", StringComparison.Ordinal) + "\"contentHash\": \"".Length;
            string mine = Path.Combine(folder, "lock.json");
            await File.WriteAllTextAsync(mine, changed ? $"{text[..at]}{(text[at] == 'A' ? 'B' : 'A')}{text[(at + 1)..]}" : text, TestContext.Current.CancellationToken);
            ProcessStartInfo start = new("dotnet", ["restore", Path.Combine(Repository.Room("Dewstone.Model"), "Dewstone.Model.csproj"), "--locked-mode", $"-p:NuGetLockFilePath={mine}", $"-p:ArtifactsPath={folder}"])
            {
                RedirectStandardOutput = true,
                UseShellExecute = false,
            };
            using Process process = Process.Start(start)!;
            string output = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
            await process.WaitForExitAsync(TestContext.Current.CancellationToken);
            Assert.Equal(changed, process.ExitCode != 0);

            // NU1403: the content hash differs from the lock file's (docs of NuGet, errors and warnings).
            Assert.Equal(changed, output.Contains("NU1403", StringComparison.Ordinal));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
