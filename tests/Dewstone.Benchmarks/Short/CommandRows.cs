namespace Dewstone.Benchmarks.Short;

/// <summary>Whole commands as processes on the example block at its default cells, cold start included, beside a bare .NET program.</summary>
internal static class CommandRows
{
    private const int ShortRuns = 25, LongRuns = 3;

    /// <summary>Measures.</summary>
    /// <param name="write">Takes a finished line.</param>
    public static void Write(Action<string> write)
    {
        if (!File.Exists(Checkout.Program))
        {
            throw new InvalidOperationException("Run ./build.sh build first.");
        }

        CommandBenchmarks commands = new();
        write("| command | runs | median s | least s | CPU s, mean | peak MB | median over the bare program's |");
        write("|---|---|---|---|---|---|---|");
        double bare = Interleaved(
            write, ShortRuns, ("bare .NET program", () => MeasuredProcess.Run(Checkout.Bare)), ("`--version`", () => MeasuredProcess.Run(Checkout.Program, "--version")));
        Row(write, "`check --drawing`", Runs(2 * LongRuns, commands.CheckDrawing), bare);
        commands.MakeFolder();
        try
        {
            Row(write, "`check`", Runs(LongRuns, commands.Check), bare);
            Row(write, "`compile`", Runs(LongRuns, commands.Compile), bare);
            Row(write, "`diff` of a folder and itself", Runs(LongRuns, commands.Diff), bare);
            Row(write, "`verify`", Runs(LongRuns, commands.Verify), bare);
        }
        finally
        {
            commands.Clean();
        }
    }

    private static MeasuredProcess[] Runs(int runs, Func<MeasuredProcess> run) => [.. Enumerable.Range(0, runs).Select(_ => run())];

    // In turn, so that both meet the same machine; the first of each is for warming the disk's cache.
    private static double Interleaved(Action<string> write, int runs, (string Name, Func<MeasuredProcess> Run) bare, (string Name, Func<MeasuredProcess> Run) other)
    {
        List<MeasuredProcess> first = [], second = [];
        for (int run = 0; run <= runs; run++)
        {
            first.Add(bare.Run());
            second.Add(other.Run());
        }

        double median = Measured.MedianOf(first.Skip(1).Select(taken => taken.Seconds));
        Row(write, bare.Name, [.. first.Skip(1)], median);
        Row(write, other.Name, [.. second.Skip(1)], median);
        return median;
    }

    private static void Row(Action<string> write, string name, MeasuredProcess[] runs, double bare)
    {
        double median = Measured.MedianOf(runs.Select(run => run.Seconds));
        string peak = HeartTable.Digits(Measured.MedianOf(runs.Select(run => run.PeakMegabytes)));
        write($"| {name} | {runs.Length} | {HeartTable.Digits(median)} | {HeartTable.Digits(runs.Min(run => run.Seconds))} | {HeartTable.Digits(runs.Average(run => run.ProcessorSeconds))} | {peak} | {HeartTable.Digits(median / bare)} |");
    }
}
