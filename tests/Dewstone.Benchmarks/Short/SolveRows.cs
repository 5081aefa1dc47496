namespace Dewstone.Benchmarks.Short;

/// <summary>Reading, shape, finite elements, wetting and compiling.</summary>
internal static class SolveRows
{
    // 1,000 units of 380 bytes in 0.17 s, read into a tree by compiled code on a like machine.
    private const double TreeMegabytesASecond = 0.38 / 0.17;

    /// <summary>Measures reading.</summary>
    /// <param name="table">Where the rows go.</param>
    public static void Reading(HeartTable table)
    {
        ReadingBenchmarks reading = new();
        long bytes = new FileInfo(ReadingBenchmarks.Alone).Length;
        table.Row(
            "reading units", $"{ReadingBenchmarks.Units} x {bytes} B", 1, () => reading.UnitsAlone(), ReadingBenchmarks.Units * bytes / 1e6, "MB/s", TreeMegabytesASecond);
        table.Row("reading a unit with all it names", "wrack-block", 1, reading.WithAllItNames, 1.0, "/s", rounds: 21);
    }

    /// <summary>Measures signed distances and voxelizing.</summary>
    /// <param name="table">Where the rows go.</param>
    public static void Shape(HeartTable table)
    {
        foreach (int threads in (int[])[1, 2])
        {
            VoxelizerBenchmarks shape = new() { Threads = threads };
            if (threads == 1)
            {
                table.Row("signed distance", "block, 64^3 points", 1, shape.SignedDistances, VoxelizerBenchmarks.Points / 1e6, "Mpoint/s");
            }

            double cells = VoxelizerBenchmarks.Cells / 1e6;
            table.Row("voxelizing", $"block, {HeartTable.Digits(cells)} Mcell", threads, () => shape.Voxelize(), cells, "Mcell/s");
        }
    }

    /// <summary>Measures finite elements.</summary>
    /// <param name="table">Where the rows go.</param>
    public static void Elements(HeartTable table)
    {
        foreach (int threads in (int[])[1, 2])
        {
            ElasticBenchmarks body = new() { Side = 48, Threads = threads };
            body.Prepare();
            table.Row("finite elements, 4 sets of forces", "48^3 bricks, cube", threads, () => body.Solve(), 4.0 * body.Bricks / 1e3, "kbrick/s");
        }
    }

    /// <summary>Measures the forward solve.</summary>
    /// <param name="table">Where the rows go.</param>
    public static void Wetting(HeartTable table)
    {
        foreach (int threads in (int[])[1, 2])
        {
            WettingJobBenchmarks wetting = new() { CellsPerPitch = 8, Job = "cube", Threads = threads };
            wetting.LayOut();
            double updates = wetting.Solve() / 1e9;
            table.Row("forward solve", "solid cube, 8 cells", threads, () => wetting.Solve(), updates, "Gcell/s", rounds: 4);
        }
    }

    /// <summary>Measures correction and the passes of a compile.</summary>
    /// <param name="table">Where the rows go.</param>
    public static void Compile(HeartTable table)
    {
        foreach (int threads in (int[])[1, 2])
        {
            CorrectionBenchmarks correction = new() { Threads = threads };
            correction.Prepare();
            table.Row("correcting the doses", "crossed cube", threads, correction.Correct, correction.Voxels / 1e3, "kvoxel/s", rounds: 3);
        }

        foreach (int threads in (int[])[1, 2])
        {
            CompileBenchmarks compile = new() { Threads = threads };
            double voxels = CompileBenchmarks.Compiled.Lattice.Count / 1e3;
            table.Row("corrected compile, all passes", "wrack-block, 8 cells", threads, compile.Compile, voxels, "kvoxel/s", rounds: 3);
        }
    }
}
