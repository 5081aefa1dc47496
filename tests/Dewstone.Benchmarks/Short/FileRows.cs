namespace Dewstone.Benchmarks.Short;

/// <summary>
/// Writing files, in memory. Beside them stand figures of a like machine: a small palette writer on the system's zlib (24 pictures of 1152^2 in 0.116 s), and
/// 18 tables of 324 rows in 4.6 ms, files written.
/// </summary>
internal static class FileRows
{
    private const double PaletteMegapixels = 24 * 1152 * 1152 / 1e6 / 0.116;
    private const double TableMegarows = 18 * 324 / 1e6 / 0.0046;

    /// <summary>Measures.</summary>
    /// <param name="table">Where the rows go.</param>
    public static void Write(HeartTable table)
    {
        JobDataBenchmarks data = new();
        data.Prepare();
        double bytes = data.JobJson().Bytes.Length / 1e6;
        table.Row("dose tables, CSV", $"{data.Rows} rows", 1, data.DoseTables, data.Rows / 1e6, "Mrow/s", TableMegarows, rounds: 21);
        table.Row("job.json", Megabytes(bytes), 1, data.JobJson, bytes, "MB/s", rounds: 21);
        table.Row("predicted.vti, packed", $"{HeartTable.Digits(data.Cells / 1e6)} Mcell", 1, data.Field, data.Cells / 1e6, "Mcell/s");

        PngBenchmarks png = new();
        png.Draw();
        double pixels = png.Pixels / 1e6;
        table.Row("plates, PNG truecolour", $"{HeartTable.Digits(pixels)} Mpixel", 1, () => png.Write(), pixels, "Mpixel/s", PaletteMegapixels);

        SurfaceFileBenchmarks surface = new();
        surface.Find();
        double glb = surface.Glb() / 1e6, stl = surface.Stl() / 1e6;
        table.Row("deviation and water/cement of the surface", $"{surface.Corners} corners", 1, surface.LookAt, surface.Corners / 1e6, "Mcorner/s");
        table.Row("predicted.glb", Megabytes(glb), 1, () => surface.Glb(), glb, "MB/s", rounds: 21);
        table.Row("predicted.stl", Megabytes(stl), 1, () => surface.Stl(), stl, "MB/s", rounds: 21);

        foreach (int threads in (int[])[1, 2])
        {
            CompileBenchmarks all = new() { Threads = threads };
            double folder = all.Files().Sum(file => (double)file.Bytes.Length) / 1e6;
            table.Row("all files of the folder", Megabytes(folder), threads, all.Files, folder, "MB/s", rounds: 3);
        }
    }

    private static string Megabytes(double megabytes) => HeartTable.Digits(megabytes) + " MB";
}
