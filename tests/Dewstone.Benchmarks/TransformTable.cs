using System.Diagnostics;
using System.Globalization;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Results;

namespace Dewstone.Benchmarks;

/// <summary>Each transform of the cells against figures measured with general-purpose libraries on a like machine, on the same solid.</summary>
internal static class TransformTable
{
    private const int Rounds = 5;

    /// <summary>Seconds after which no further round begins.</summary>
    private const double MostSeconds = 10.0;

    private static readonly int[] Sides = [144, 288];

    /// <summary>Prints the table: the least processor time of one thread, its ratio to the figure, and the least time on the clock of two threads; seconds.</summary>
    public static void Print()
    {
        Console.WriteLine("| transform | cells | figure s | 1 thread CPU s | ratio | 2 threads s |");
        Console.WriteLine("|---|---|---|---|---|---|");
        foreach (int side in Sides)
        {
            GridShape shape = new(side, side, side);
            float[] field = NumericsSolid.Field(shape);
            byte[] cells = NumericsSolid.Cells(field);
            bool small = side == Sides[0];
            Row("squared distances, exact", side, small ? 0.040 : 0.30, threads => DistanceTransform.Squared(cells, shape, Phase.Empty, OutsideCells.Ignored, threads));
            Row("pieces, joined by faces", side, small ? 0.021 : 0.18, threads => Components.Label(cells, shape, Phase.Set, Connectivity.Faces, threads));
            Row("surface between cells", side, small ? 0.085 : 0.34, threads => IsoSurface.At(field, shape, CellSize.Unit, 0f, threads));
            Row("local thickness, all radii", side, small ? 9.6 : 82.0, threads => LocalThickness.Of(
                SurfaceDistance.Of(field, shape, CellSize.Unit, 0f, side / 2.0, threads), shape, CellSize.Unit, threads));
            Row("opening by a ball, 8 cells", side, small ? 0.81 : 12.6, threads => BallOpening.Open(cells, shape, CellSize.Unit, 8.0, OutsideCells.Empty, threads));
        }
    }

    private static void Row(string name, int side, double figure, Func<Parallelism, object> work)
    {
        double one = Least(new Parallelism(1), work).Cpu, two = Least(new Parallelism(2), work).Wall;
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"| {name} | {side}^3 | {figure:0.0##} | {one:0.000} | {one / figure:0.00} | {two:0.000} |"));
    }

    // On a machine with other work the time on the clock says little, and the least of several rounds most.
    private static (double Cpu, double Wall) Least(Parallelism threads, Func<Parallelism, object> work)
    {
        double cpu = double.PositiveInfinity, wall = double.PositiveInfinity;
        Stopwatch all = Stopwatch.StartNew();
        for (int round = 0; round < Rounds && (round == 0 || all.Elapsed.TotalSeconds < MostSeconds); round++)
        {
            TimeSpan before = Process.GetCurrentProcess().TotalProcessorTime;
            Stopwatch watch = Stopwatch.StartNew();
            GC.KeepAlive(work(threads));
            wall = Math.Min(wall, watch.Elapsed.TotalSeconds);
            cpu = Math.Min(cpu, (Process.GetCurrentProcess().TotalProcessorTime - before).TotalSeconds);
        }

        return (cpu, wall);
    }
}
