using BenchmarkDotNet.Attributes;
using Dewstone.Jobs.Compilation;
using Dewstone.Jobs.Emission;
using Dewstone.Model.Results;
using Dewstone.Reading;

namespace Dewstone.Benchmarks;

/// <summary>The example block, corrected, at 8 cells a voxel: all passes, and all files of its folder in memory.</summary>
[IterationCount(3)]
public class CompileBenchmarks
{
    private static CompiledJob? compiled;

    /// <summary>Threads.</summary>
    [Params(1, 2)]
    public int Threads { get; set; }

    /// <summary>The block as last compiled.</summary>
    internal static CompiledJob Compiled => compiled ??= new CompileBenchmarks { Threads = 2 }.Compile();

    /// <summary>Every pass, reading included.</summary>
    /// <returns>The job.</returns>
    [Benchmark]
    public CompiledJob Compile() => compiled = Of(DescriptionReader.ReadJob(Checkout.Unit("wrack-block")), 8, new Parallelism(Threads));

    /// <summary>Every file.</summary>
    /// <returns>The files.</returns>
    [Benchmark]
    public IReadOnlyList<EmittedFile> Files() => FilesOf(Compiled, new Parallelism(Threads));

    internal static CompiledJob Of(ReadResult read, int cells, Parallelism parallelism)
    {
        CompileResult result = JobCompiler.Compile(
            read, new CompileOptions { CellsPerVoxel = cells, ToolVersion = "0.1.0" }, parallelism, null, CancellationToken.None);
        return result.Job ?? throw new InvalidOperationException("It does not compile: " + string.Join("; ", result.Findings.Select(f => $"{f.Code} {f.Message}")));
    }

    internal static IReadOnlyList<EmittedFile> FilesOf(CompiledJob job, Parallelism parallelism) =>
        JobFiles.Of(job, Path.GetFileName, rawField: false, parallelism, CancellationToken.None);
}
