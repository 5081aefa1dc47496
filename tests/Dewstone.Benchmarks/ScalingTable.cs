using System.Globalization;

namespace Dewstone.Benchmarks;

/// <summary>
/// How time and memory grow with cells a voxel, size and threads: the crossed cube from half to twice its size on the same pitch, corrected, each point a process of its own.
/// </summary>
internal static class ScalingTable
{
    private const int DefaultCells = 8;
    private static readonly int[] Cells = [4, 6, DefaultCells, 10, 12];
    private static readonly double[] Scales = [0.5, 1.0, 1.5, 2.0];
    private static readonly string[] Figures = ["compile", "correction", "last wetting", "files", "peak memory"];

    /// <summary>Prints the table and the slopes.</summary>
    /// <param name="words">Number of runs of each point, 3 when not said; the median of each figure is printed.</param>
    public static void Print(string[] words)
    {
        int runs = words is [string said] ? int.Parse(said, CultureInfo.InvariantCulture) : 3;
        Console.WriteLine(Machine.Line());
        Console.WriteLine();
        Console.WriteLine("| cube m | cells | threads | voxels | Mcell | compile s | correction in it s | last wetting s | files s | peak MB | peak B a cell |");
        Console.WriteLine("|---|---|---|---|---|---|---|---|---|---|---|");
        ScalingPoint middle = Row(1.0, DefaultCells, 2, runs);
        ScalingPoint[] byCells = [.. Cells.Select(cells => cells == DefaultCells ? middle : Row(1.0, cells, 2, runs))];
        ScalingPoint[] bySize = [.. Scales.Select(scale => scale == 1.0 ? middle : Row(scale, DefaultCells, 2, runs))];
        ScalingPoint one = Row(1.0, DefaultCells, 1, runs);
        Console.WriteLine();
        Console.WriteLine($"| slope of the logarithms over the number of cells, least squares | {string.Join(" | ", Figures)} |");
        Console.WriteLine("|---|---|---|---|---|---|");
        Slopes("cells a voxel, 4 to 12", byCells);
        Slopes("size, 0.46 to 1.83 m", bySize);
        Console.WriteLine($"| one thread over two, at 0.914 m | {string.Join(" | ", one.Figures.Zip(middle.Figures, (a, b) => Text(a / b, "0.00")))} |");
    }

    private static ScalingPoint Row(double scale, int cells, int threads, int runs)
    {
        ScalingPoint point = ScalingPoint.MedianOf([.. Enumerable.Range(0, runs).Select(_ => ScalingPoint.InProcess(scale, cells, threads))]);
        double megacells = point.Cells / 1e6;
        string seconds = string.Join(" | ", point.Figures.Take(4).Select(figure => Text(figure, "0.00")));
        Console.WriteLine(
            $"| {Text(0.9144 * scale, "0.000")} | {cells} | {threads} | {point.Voxels} | {Text(megacells, "0.00")} | {seconds} | {Text(point.PeakMegabytes, "0")} | {Text(point.PeakMegabytes / megacells, "0")} |");
        return point;
    }

    private static void Slopes(string name, ScalingPoint[] points) =>
        Console.WriteLine($"| {name} | {string.Join(" | ", Figures.Select((_, figure) => Text(Slope(points, figure), "0.00")))} |");

    private static double Slope(ScalingPoint[] points, int figure)
    {
        (double X, double Y)[] logs = [.. points.Select(point => (Math.Log(point.Cells), Math.Log(point.Figures[figure])))];
        double x = logs.Average(p => p.X), y = logs.Average(p => p.Y);
        return logs.Sum(p => (p.X - x) * (p.Y - y)) / logs.Sum(p => (p.X - x) * (p.X - x));
    }

    private static string Text(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
