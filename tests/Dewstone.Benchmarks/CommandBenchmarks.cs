using BenchmarkDotNet.Attributes;

namespace Dewstone.Benchmarks;

/// <summary>
/// Whole commands as processes, cold start included, on the program that <c>./build.sh build</c> left; a bare .NET program in the same run is the
/// yardstick for start-up.
/// </summary>
[WarmupCount(1)]
[IterationCount(9)]
[InvocationCount(1, 1)]
public class CommandBenchmarks
{
    private readonly string block = Checkout.Unit("wrack-block");
    private string output = "";

    /// <summary>Compiles the folder that others read.</summary>
    [GlobalSetup]
    public void MakeFolder()
    {
        output = Directory.CreateTempSubdirectory("dewstone-bench-").FullName;
        Compile();
    }

    /// <summary>Sweeps up.</summary>
    [GlobalCleanup]
    public void Clean() => Directory.Delete(output, recursive: true);

    /// <summary>A line and nothing else.</summary>
    /// <returns>What it took.</returns>
    [Benchmark(Baseline = true)]
    public MeasuredProcess BareProgram() => MeasuredProcess.Run(Checkout.Bare);

    /// <summary>The shortest command.</summary>
    /// <returns>What it took.</returns>
    [Benchmark]
    public MeasuredProcess Version() => MeasuredProcess.Run(Checkout.Program, "--version");

    /// <summary>Reading, shape and printer.</summary>
    /// <returns>What it took.</returns>
    [Benchmark]
    public MeasuredProcess CheckDrawing() => MeasuredProcess.Run(Checkout.Program, "check", "--drawing", "--quiet", block);

    /// <summary>All but the files.</summary>
    /// <returns>What it took.</returns>
    [Benchmark]
    public MeasuredProcess Check() => MeasuredProcess.Run(Checkout.Program, "check", "--quiet", block);

    /// <summary>The whole.</summary>
    /// <returns>What it took.</returns>
    [Benchmark]
    public MeasuredProcess Compile() => MeasuredProcess.Run(Checkout.Program, "compile", "--quiet", block, "-o", output);

    /// <summary>A folder against itself.</summary>
    /// <returns>What it took.</returns>
    [Benchmark]
    public MeasuredProcess Diff() => MeasuredProcess.Run(Checkout.Program, "diff", Folder, Folder);

    /// <summary>The folder simulated again.</summary>
    /// <returns>What it took.</returns>
    [Benchmark]
    public MeasuredProcess Verify() => MeasuredProcess.Run(Checkout.Program, "verify", "--quiet", Folder);

    private string Folder => Directory.GetDirectories(output, "*.job").Single();
}
