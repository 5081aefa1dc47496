using BenchmarkDotNet.Attributes;
using Dewstone.Reading;

namespace Dewstone.Benchmarks;

/// <summary>Reading descriptions from files: tree, binding, units, ranges.</summary>
public class ReadingBenchmarks
{
    /// <summary>Units of one run.</summary>
    public const int Units = 1000;

    /// <summary>The unit that is read alone.</summary>
    public static string Alone { get; } = Checkout.Unit("oyster-step");

    /// <summary>One unit's file, again and again.</summary>
    /// <returns>Findings, none.</returns>
    [Benchmark(OperationsPerInvoke = Units)]
    public int UnitsAlone()
    {
        int findings = 0;
        for (int unit = 0; unit < Units; unit++)
        {
            findings += DescriptionReader.ReadUnit(Alone).Diagnostics.Count;
        }

        return findings;
    }

    /// <summary>The block with mix, printer, needles and site.</summary>
    /// <returns>What was read.</returns>
    [Benchmark]
    public ReadResult WithAllItNames() => DescriptionReader.ReadJob(Checkout.Unit("wrack-block"));
}
