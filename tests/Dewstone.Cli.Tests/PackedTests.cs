using System.Diagnostics;
using System.IO.Compression;
using System.Runtime.InteropServices;
using System.Text.Json;
using Dewstone.Tests;

namespace Dewstone.Cli.Tests;

/// <summary>
/// What <c>./build.sh pack here</c> made, used as one does who has nothing else: no checkout, an empty folder, a home of its own. Packing takes two minutes of an
/// empty machine, so these run with the soak tests, which pack first.
/// </summary>
[Trait("Category", "Soak")]
public sealed class PackedTests : IDisposable
{
    private static readonly string Pack = Repository.Path(".artifacts", "pack-here");
    private static readonly string Machine = RuntimeInformation.RuntimeIdentifier;

    private readonly string folder = Directory.CreateTempSubdirectory("dewstone-packed-").FullName;

    [Fact]
    public async Task Tool_is_installed_runs_like_the_build_and_leaves_nothing_when_uninstalled()
    {
        SkipUnlessFresh();
        string tools = In("tools");
        Words.Answer installed = await RunAsync("dotnet", "tool", "install", "Dewstone", "--tool-path", tools, "--source", Pack, "--version", ToolVersion.Text);
        Assert.True(installed.Code == 0, installed.Output + installed.Error);
        await RunsLikeTheBuildAsync(Path.Combine(tools, "dewstone"));

        Words.Answer gone = await RunAsync("dotnet", "tool", "uninstall", "Dewstone", "--tool-path", tools);
        Assert.True(gone.Code == 0, gone.Output + gone.Error);
        Assert.Empty(Directory.EnumerateFiles(tools, "*", SearchOption.AllDirectories));
    }

    [Fact]
    public async Task Single_file_runs_like_the_build_where_no_dotnet_is()
    {
        SkipUnlessFresh();
        string program = In("dewstone");
        File.Copy(Path.Combine(Pack, Machine, "dewstone"), program);
        Assert.Equal(["dewstone"], Directory.EnumerateFiles(Path.Combine(Pack, Machine)).Select(Path.GetFileName));
        await RunsLikeTheBuildAsync(program);
    }

    [Fact]
    public void Package_holds_the_solver_of_its_machine_alone()
    {
        SkipUnlessFresh();
        string[] packages = [.. Directory.EnumerateFiles(Pack, $"Dewstone.*-*.{ToolVersion.Text}.nupkg")];
        Assert.Contains(packages, package => package.Contains(Machine, StringComparison.Ordinal));
        foreach (string package in packages)
        {
            string machine = Path.GetFileName(package)["Dewstone.".Length..^$".{ToolVersion.Text}.nupkg".Length];
            using ZipArchive archive = ZipFile.OpenRead(package);
            Assert.All(archive.Entries.Where(entry => entry.FullName.StartsWith("tools/", StringComparison.Ordinal)), entry => Assert.StartsWith($"tools/net10.0/{machine}/", entry.FullName, StringComparison.Ordinal));
            Assert.Equal(
                [machine.StartsWith("win", StringComparison.Ordinal) ? "google-ortools-native.dll" : machine.StartsWith("osx", StringComparison.Ordinal) ? "google-ortools-native.dylib" : "google-ortools-native.so"],
                archive.Entries.Select(entry => entry.Name).Where(name => name.StartsWith("google-ortools-native", StringComparison.Ordinal)));
        }
    }

    [Fact]
    public async Task Bill_of_materials_lists_what_the_program_needs_and_no_time()
    {
        SkipUnlessFresh();
        using JsonDocument needed = JsonDocument.Parse(await File.ReadAllBytesAsync(Path.Combine(AppContext.BaseDirectory, "dewstone.deps.json")));
        using JsonDocument bill = JsonDocument.Parse(await File.ReadAllBytesAsync(Path.Combine(Pack, "bill-of-materials.json")));
        Assert.False(bill.RootElement.TryGetProperty("serialNumber", out _));
        Assert.False(bill.RootElement.GetProperty("metadata").TryGetProperty("timestamp", out _));
        JsonElement[] components = [.. bill.RootElement.GetProperty("components").EnumerateArray()];
        Assert.All(components, component => Assert.Equal("SHA-512", component.GetProperty("hashes")[0].GetProperty("alg").GetString()));

        // The program beside the tests has this machine's native part alone; the bill is of all machines.
        HashSet<string> listed = [.. components.Select(component => $"{component.GetProperty("name")}/{component.GetProperty("version")}")];
        Assert.Equal(
            [],
            needed.RootElement.GetProperty("libraries").EnumerateObject().Where(library => library.Value.GetProperty("type").GetString() == "package")
                .Select(library => library.Name).Where(name => !listed.Contains(name)));
    }

    [Fact]
    public async Task Manual_page_and_completions_laid_beside_are_those_the_program_prints()
    {
        SkipUnlessFresh();
        Assert.Equal((await Words.Run("manual")).Output, await File.ReadAllTextAsync(Path.Combine(Pack, "share", "man", "man1", "dewstone.1")));
        Assert.Equal((await Words.Run("completion", "bash")).Output, await File.ReadAllTextAsync(Path.Combine(Pack, "share", "bash-completion", "completions", "dewstone")));
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private async Task RunsLikeTheBuildAsync(string program)
    {
        Assert.Equal(new Words.Answer(0, ToolVersion.Text + "\n", ""), await RunAsync(program, "--version"));
        Assert.Equal(0, (await RunAsync(program, "new", "unit", "fresh.unit.yaml")).Code);
        Assert.Equal((await Words.Run("schema", "unit")).Output, (await RunAsync(program, "schema", "unit")).Output);

        // The example in a folder of its own: the same job, byte for byte, as the build beside these tests makes.
        CopyExamples();
        string unit = In("wrackline-bay", "units", "oyster-step.unit.yaml");
        Words.Answer packed = await RunAsync(program, "compile", unit, "-o", In("packed"), "--cells", "4", "--quiet");
        Assert.True(packed.Code == 0, packed.Output + packed.Error);
        Assert.Equal(0, (await Words.Run("compile", unit, "-o", In("built"), "--cells", "4", "--quiet")).Code);
        Assert.Equal(SmallYard.Hashes(In("built")), SmallYard.Hashes(In("packed")));

        // The solver's native part is found.
        using TinyOrder order = new(3);
        Words.Answer planned = await RunAsync(program, "order", "plan", order.File, "-o", order.In("packed"), "--quiet");
        Assert.True(planned.Code == 0, planned.Output + planned.Error);
        Assert.Equal(0, (await Words.Run("order", "plan", order.File, "-o", order.In("built"), "--quiet")).Code);
        Assert.Equal(SmallYard.Hashes(order.In("built")), SmallYard.Hashes(order.In("packed")));
    }

    private string In(params string[] parts) => Path.Combine([folder, .. parts]);

    private void CopyExamples()
    {
        string from = Repository.Path("examples", "wrackline-bay");
        foreach (string file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            string to = In("wrackline-bay", Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            File.Copy(file, to);
        }
    }

    private async Task<Words.Answer> RunAsync(string program, params string[] words)
    {
        ProcessStartInfo start = new(program, words) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };

        // Nothing of an earlier installation or of this machine's user is found; .NET only by what has to find it.
        bool isSingleFile = program == In("dewstone");
        Directory.CreateDirectory(In("home"));
        start.Environment["HOME"] = start.Environment["DOTNET_CLI_HOME"] = In("home");
        start.Environment["NUGET_PACKAGES"] = In("packages");
        start.Environment["DOTNET_ROOT"] = isSingleFile ? "/nowhere" : Path.GetFullPath(Path.Combine(RuntimeEnvironment.GetRuntimeDirectory(), "..", "..", ".."));
        if (isSingleFile)
        {
            start.Environment["PATH"] = "/nowhere";
        }

        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(), error = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        return new Words.Answer(process.ExitCode, await output, await error);
    }

    private static void SkipUnlessFresh()
    {
        FileInfo made = new(Path.Combine(Pack, "made"));
        Assert.SkipUnless(made.Exists, "no packages: run ./build.sh pack here");
        Assert.SkipWhen(
            new DirectoryInfo(Repository.Path("src")).EnumerateFiles("*", SearchOption.AllDirectories).Any(file => file.LastWriteTimeUtc > made.LastWriteTimeUtc),
            "the packages are older than the sources: run ./build.sh pack here");
    }
}
