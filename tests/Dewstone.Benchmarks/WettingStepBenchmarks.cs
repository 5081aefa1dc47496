using System.Numerics;
using System.Runtime.InteropServices;
using BenchmarkDotNet.Attributes;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Benchmarks;

/// <summary>
/// One transport step over 160 x 160 x 64 cells (the open layers of a 914 mm cube at 8 cells a voxel, all wet), beside the memory's own pace:
/// y = x + 3 z over as many floats. Every row is a time per cell: 0.5 ns are 2 Gcell/s.
/// </summary>
public class WettingStepBenchmarks
{
    private const int Side = 160;
    private const int Planes = 64;
    private const int Cells = Side * Side * Planes;

    private readonly float[] x = new float[Cells];
    private readonly float[] y = new float[Cells];
    private readonly float[] z = new float[Cells];
    private TransportStepper oneThread = null!;
    private TransportStepper twoThreads = null!;
    private TransportStepper exponential = null!;

    /// <summary>Wets every cell unevenly.</summary>
    [GlobalSetup]
    public void Wet()
    {
        PowerLaw power = new() { AtSaturation = new Diffusivity(3.2e-6), Exponent = 4 };
        oneThread = Wetted(power, 1);
        twoThreads = Wetted(power, 2);
        exponential = Wetted(new ExponentialLaw { AtSaturation = new Diffusivity(1.5e-5), Exponent = 8 }, 1);
    }

    /// <summary>Two reads and a write a cell.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = Cells)]
    public void Triad()
    {
        ReadOnlySpan<Vector<float>> a = MemoryMarshal.Cast<float, Vector<float>>(x);
        ReadOnlySpan<Vector<float>> b = MemoryMarshal.Cast<float, Vector<float>>(z);
        Span<Vector<float>> sum = MemoryMarshal.Cast<float, Vector<float>>(y.AsSpan());
        for (int i = 0; i < sum.Length; i++)
        {
            sum[i] = a[i] + b[i] * 3f;
        }
    }

    /// <summary>Power law, m = 4.</summary>
    [Benchmark(OperationsPerInvoke = Cells)]
    public void PowerLawOneThread() => oneThread.Step(1e-3);

    /// <summary>Power law, m = 4, two threads.</summary>
    [Benchmark(OperationsPerInvoke = Cells)]
    public void PowerLawTwoThreads() => twoThreads.Step(1e-3);

    /// <summary>Exponential law, b = 8.</summary>
    [Benchmark(OperationsPerInvoke = Cells)]
    public void ExponentialLawOneThread() => exponential.Step(1e-3);

    private static TransportStepper Wetted(WettingLaw law, int threads)
    {
        TransportStepper field = new(Side, Side, Planes, 0.00635, 0.00635, MoisturePotential.Of(law, 0.383947), threads);
        for (int row = 0; row < Side * Planes; row++)
        {
            for (int i = 0; i < Side; i++)
            {
                field.Content[row * field.RowStride + i] = 0.1f + (i * 7 + row * 3) % 100 * 0.002f;
            }

            field.Touch(row % Side, row / Side, 0.3f);
        }

        return field;
    }
}
