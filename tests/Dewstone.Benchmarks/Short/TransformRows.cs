namespace Dewstone.Benchmarks.Short;

/// <summary>
/// Each transform of the cells beside figures measured with general-purpose libraries (and, for distances, with compiled code) on a like machine, one thread, on
/// the same solid.
/// </summary>
internal static class TransformRows
{
    /// <summary>Measures.</summary>
    /// <param name="table">Where the rows go.</param>
    public static void Write(HeartTable table)
    {
        foreach (int side in (int[])[144, 288])
        {
            foreach (int threads in (int[])[1, 2])
            {
                NumericsBenchmarks solid = new() { Side = side, Threads = threads };
                solid.Prepare();
                bool small = side == 144;
                Row("distance transform, exact", solid.DistancesOfCubes, small ? 0.040 : 0.30);
                Row("components, joined by faces", solid.Labels6, small ? 0.021 : 0.18);
                Row("iso-surface", solid.Surface, small ? 0.085 : 0.34);
                Row("local thickness, all radii", solid.Thickness, small ? 9.6 : 82.0);
                Row("percolating width", () => solid.WidestWay(), null);

                void Row(string name, Func<object?> work, double? figureSeconds)
                {
                    double cells = Math.Pow(side, 3) / 1e6;
                    table.Row(name, $"{side}^3", threads, work, cells, "Mcell/s", cells / figureSeconds);
                }
            }
        }
    }
}
