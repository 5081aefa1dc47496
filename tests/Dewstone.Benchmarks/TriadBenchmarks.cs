using System.Numerics;
using System.Runtime.InteropServices;
using BenchmarkDotNet.Attributes;

namespace Dewstone.Benchmarks;

/// <summary>
/// The memory's own pace: y = x + 3 z over 400 MB arrays, 12 bytes a place, two reads and a write (the triad of McCalpin's STREAM, 1995; from memory).
/// </summary>
public class TriadBenchmarks
{
    /// <summary>Bytes of one pass.</summary>
    public const double Bytes = 12.0 * Places;

    private const int Places = 100_000_000;

    private float[] x = [];
    private float[] y = [];
    private float[] z = [];

    /// <summary>Threads.</summary>
    [Params(1, 2)]
    public int Threads { get; set; }

    /// <summary>Makes the arrays; the first pass touches them.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        (x, y, z) = (new float[Places], new float[Places], new float[Places]);
        Array.Fill(x, 1f);
        Array.Fill(z, 2f);
    }

    /// <summary>One pass, each thread over a stretch of its own.</summary>
    /// <returns>The sums.</returns>
    [Benchmark]
    public float[] Triad()
    {
        int stretch = Places / Threads;
        Parallel.For(0, Threads, new ParallelOptions { MaxDegreeOfParallelism = Threads }, part => Pass(part * stretch, stretch));
        return y;
    }

    private void Pass(int first, int places)
    {
        ReadOnlySpan<Vector<float>> a = MemoryMarshal.Cast<float, Vector<float>>(x.AsSpan(first, places));
        ReadOnlySpan<Vector<float>> b = MemoryMarshal.Cast<float, Vector<float>>(z.AsSpan(first, places));
        Span<Vector<float>> sum = MemoryMarshal.Cast<float, Vector<float>>(y.AsSpan(first, places));
        for (int i = 0; i < sum.Length; i++)
        {
            sum[i] = a[i] + b[i] * 3f;
        }
    }
}
