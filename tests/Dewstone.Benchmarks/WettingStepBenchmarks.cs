using BenchmarkDotNet.Attributes;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Benchmarks;

/// <summary>Transport steps over a cube of cells, all wet.</summary>
public class WettingStepBenchmarks
{
    /// <summary>Steps of one run.</summary>
    public const int Steps = 16;

    private TransportStepper power = null!;
    private TransportStepper exponential = null!;

    /// <summary>Cells a side.</summary>
    [Params(144, 288)]
    public int Side { get; set; }

    /// <summary>Threads.</summary>
    [Params(1, 2)]
    public int Threads { get; set; }

    /// <summary>Wets every cell unevenly.</summary>
    [GlobalSetup]
    public void Wet()
    {
        power = Wetted(new PowerLaw { AtSaturation = new Diffusivity(3.2e-6), Exponent = 4 });
        exponential = Wetted(new ExponentialLaw { AtSaturation = new Diffusivity(1.5e-5), Exponent = 8 });
    }

    /// <summary>Power law, m = 4.</summary>
    /// <returns>Cell updates so far.</returns>
    [Benchmark(OperationsPerInvoke = Steps)]
    public long PowerLaw() => March(power);

    /// <summary>Exponential law, b = 8.</summary>
    /// <returns>Cell updates so far.</returns>
    [Benchmark(OperationsPerInvoke = Steps)]
    public long ExponentialLaw() => March(exponential);

    private static long March(TransportStepper field)
    {
        for (int step = 0; step < Steps; step++)
        {
            field.Step(1e-3);
        }

        return field.CellUpdates;
    }

    private TransportStepper Wetted(WettingLaw law)
    {
        TransportStepper field = new(Side, Side, Side, 0.00635, 0.00635, MoisturePotential.Of(law, 0.383947), Threads);
        for (int row = 0; row < Side * Side; row++)
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
