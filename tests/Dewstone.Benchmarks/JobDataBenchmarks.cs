using BenchmarkDotNet.Attributes;
using Dewstone.Jobs.Emission;
using Dewstone.Model.Results;

namespace Dewstone.Benchmarks;

/// <summary>Writing the example block's data in memory, one thread: dose tables, <c>job.json</c>, <c>predicted.vti</c>.</summary>
public class JobDataBenchmarks
{
    private readonly CompiledJob job = CompileBenchmarks.Compiled;
    private EmissionSettings settings = null!;
    private JobTables tables = null!;

    /// <summary>Rows of all dose tables.</summary>
    public int Rows => job.Doses.CentiMillilitres.Count(dose => dose > 0);

    /// <summary>Cells of the field.</summary>
    public int Cells => job.Moisture.Hardened.Length;

    /// <summary>Makes what the emitters need.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        settings = JobFiles.Settings(job, Path.GetFileName, rawField: false, new Parallelism(1));
        tables = JobTables.Of(job.Description, job.Doses, job.Timeline, settings.Addressing);
    }

    /// <summary>One CSV a layer.</summary>
    /// <returns>The files.</returns>
    [Benchmark]
    public IReadOnlyList<EmittedFile> DoseTables() => DoseTableEmitter.Emit(job.Doses, job.Description.Needles, settings.Addressing);

    /// <summary>The job itself.</summary>
    /// <returns>The file.</returns>
    [Benchmark]
    public EmittedFile JobJson() => JobCoreEmitter.Emit(job, settings.Wetting, tables);

    /// <summary>The field, quantised and packed.</summary>
    /// <returns>The file.</returns>
    [Benchmark]
    public EmittedFile Field() => PredictedFieldEmitter.Emit(job.Moisture, settings.Parallelism);
}
