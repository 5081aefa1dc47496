using System.Diagnostics;

namespace Dewstone.Benchmarks;

/// <summary>What some work took, over several rounds; seconds.</summary>
/// <param name="Least">Least time on the clock: on a machine with other work it says most.</param>
/// <param name="Median">Median time on the clock.</param>
/// <param name="Processor">Least processor time of all threads.</param>
internal readonly record struct Measured(double Least, double Median, double Processor)
{
    /// <summary>Measures. The first of three or more rounds is for warming up alone.</summary>
    /// <param name="work">The work; what it returns is kept alive until it has ended.</param>
    /// <param name="rounds">Rounds at most.</param>
    /// <param name="mostSeconds">Seconds after which no further round begins.</param>
    /// <returns>What it took.</returns>
    public static Measured Of(Func<object?> work, int rounds, double mostSeconds)
    {
        List<(double Clock, double Processor)> taken = [];
        GC.Collect();
        Stopwatch all = Stopwatch.StartNew();
        while (taken.Count < rounds && (taken.Count == 0 || all.Elapsed.TotalSeconds < mostSeconds))
        {
            TimeSpan before = Environment.CpuUsage.TotalTime;
            Stopwatch watch = Stopwatch.StartNew();
            GC.KeepAlive(work());
            double clock = watch.Elapsed.TotalSeconds;
            taken.Add((clock, (Environment.CpuUsage.TotalTime - before).TotalSeconds));
        }

        (double Clock, double Processor)[] counted = [.. taken.Skip(taken.Count > 2 ? 1 : 0)];
        return new Measured(counted.Min(t => t.Clock), MedianOf(counted.Select(t => t.Clock)), counted.Min(t => t.Processor));
    }

    /// <summary>The middle value, or the mean of both.</summary>
    /// <param name="values">One or more.</param>
    /// <returns>The median.</returns>
    public static double MedianOf(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2.0;
    }
}
