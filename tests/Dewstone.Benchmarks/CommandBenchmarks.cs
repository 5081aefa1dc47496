using System.Diagnostics;
using BenchmarkDotNet.Attributes;

namespace Dewstone.Benchmarks;

/// <summary>
/// Whole commands as processes, cold start included, on the program that <c>./build.sh build</c> left; a bare .NET program in the same run is the
/// yardstick for start-up.
/// </summary>
[WarmupCount(2)]
[IterationCount(9)]
[InvocationCount(1, 1)]
public class CommandBenchmarks
{
    private const string Block = "examples/wrackline-bay/units/wrack-block.unit.yaml";
    private string root = "";
    private string output = "";

    [GlobalSetup]
    public void FindProgram()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "build.sh")))
        {
            folder = folder.Parent;
        }

        root = folder?.FullName ?? throw new InvalidOperationException("Run from a checkout of the repository.");
        output = Directory.CreateTempSubdirectory("dewstone-bench-").FullName;
        if (!File.Exists(Program))
        {
            throw new InvalidOperationException("Run ./build.sh build first.");
        }
    }

    [GlobalCleanup]
    public void Clean() => Directory.Delete(output, recursive: true);

    [Benchmark(Baseline = true)]
    public int BareProgram() => Run("dotnet", Path.Combine(AppContext.BaseDirectory, "Dewstone.Benchmarks.dll"), Benchmarks.Program.BareWord);

    [Benchmark]
    public int Version() => Run(Program, "--version");

    [Benchmark]
    public int CheckDrawing() => Run(Program, "check", "--drawing", "--quiet", Block);

    [Benchmark]
    public int Check() => Run(Program, "check", "--quiet", Block);

    [Benchmark]
    public int Compile() => Run(Program, "compile", "--quiet", Block, "-o", output);

    private string Program => Path.Combine(root, ".artifacts", "dewstone", "dewstone");

    private int Run(string program, params string[] words)
    {
        ProcessStartInfo start = new(program, words) { RedirectStandardOutput = true, UseShellExecute = false, WorkingDirectory = root };
        using Process process = Process.Start(start)!;
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? 0 : throw new InvalidOperationException($"{string.Join(' ', words)} ended with {process.ExitCode}");
    }
}
