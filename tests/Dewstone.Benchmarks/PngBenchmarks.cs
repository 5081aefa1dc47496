using BenchmarkDotNet.Attributes;
using Dewstone.Compute.Numerics;
using Dewstone.Jobs.Emission.Pictures;
using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Jobs.Emission.Pictures.Plates;
using Dewstone.Model.Results;

namespace Dewstone.Benchmarks;

/// <summary>Writing the example block's plates as PNG, one thread: packing alone, the drawing done before.</summary>
public class PngBenchmarks
{
    private Canvas[] plates = [];

    /// <summary>Pixels of all plates.</summary>
    public long Pixels => plates.Sum(plate => (long)plate.Width * plate.Height);

    /// <summary>Draws the plates.</summary>
    [GlobalSetup]
    public void Draw()
    {
        CompiledJob job = CompileBenchmarks.Compiled;
        PlateSubject subject = new(job, HardenedSurface.Of(job.Moisture, job.Description.Mix.Wetting, new Parallelism(2)));
        plates = [.. Enumerable.Range(0, job.Lattice.Layers).Select(layer => PlateEmitter.Draw(subject, layer))];
    }

    /// <summary>All plates.</summary>
    /// <returns>Bytes written.</returns>
    [Benchmark]
    public long Write()
    {
        long bytes = 0;
        foreach (Canvas plate in plates)
        {
            bytes += PngFile.Write(plate).Length;
        }

        return bytes;
    }
}
