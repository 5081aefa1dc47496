namespace Dewstone.Benchmarks.Short;

/// <summary>
/// The transport step beside the memory's own pace: a step that reads and writes each cell once moves 8 bytes a cell, so the yardstick is the triad's bytes a
/// second of the same run and threads over 8.
/// </summary>
internal static class StepRows
{
    private const double BytesACell = 8.0;

    /// <summary>Measures.</summary>
    /// <param name="table">Where the rows go.</param>
    public static void Write(HeartTable table)
    {
        double[] yardstick = [0.0, Triad(table, 1) / BytesACell, Triad(table, 2) / BytesACell];
        foreach (int side in (int[])[144, 288])
        {
            foreach (int threads in (int[])[1, 2])
            {
                WettingStepBenchmarks step = new() { Side = side, Threads = threads };
                step.Wet();
                double cells = Math.Pow(side, 3) * WettingStepBenchmarks.Steps / 1e9;
                string size = $"{side}^3, {WettingStepBenchmarks.Steps} steps";
                table.Row("transport step, power law", size, threads, () => step.PowerLaw(), cells, "Gcell/s", yardstick[threads], rounds: 21);
                if (side == 144)
                {
                    table.Row("transport step, exponential law", size, threads, () => step.ExponentialLaw(), cells, "Gcell/s", yardstick[threads], rounds: 21);
                }
            }
        }
    }

    private static double Triad(HeartTable table, int threads)
    {
        TriadBenchmarks triad = new() { Threads = threads };
        triad.Prepare();
        return table.Row("triad", "3 x 400 MB", threads, triad.Triad, TriadBenchmarks.Bytes / 1e9, "GB/s", rounds: 11);
    }
}
