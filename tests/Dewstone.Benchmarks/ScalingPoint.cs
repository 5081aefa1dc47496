using System.Diagnostics;
using System.Globalization;
using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Sequencing;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Results;
using Dewstone.Reading;

namespace Dewstone.Benchmarks;

/// <summary>What one size of the crossed cube takes.</summary>
/// <param name="Voxels">Needle positions of the window.</param>
/// <param name="Cells">Fine cells.</param>
/// <param name="Compile">Seconds of all passes.</param>
/// <param name="Correction">Seconds of the dose correction, run once more by itself.</param>
/// <param name="Wetting">Seconds of the last wetting, run once more by itself.</param>
/// <param name="Files">Seconds of all files, in memory.</param>
/// <param name="PeakMegabytes">Most memory held at once by a process that compiles and makes the files.</param>
internal sealed record ScalingPoint(long Voxels, long Cells, double Compile, double Correction, double Wetting, double Files, double PeakMegabytes)
{
    /// <summary>First word of the process that measures.</summary>
    public const string Word = "--point";

    /// <summary>What is fitted: compile, correction, wetting, files, peak.</summary>
    public double[] Figures => [Compile, Correction, Wetting, Files, PeakMegabytes];

    /// <summary>Measures in a process of its own.</summary>
    /// <param name="scale">Size over 0.914 m.</param>
    /// <param name="cells">Cells a voxel side.</param>
    /// <param name="threads">Threads.</param>
    /// <returns>The point.</returns>
    public static ScalingPoint InProcess(double scale, int cells, int threads)
    {
        string[] words = [.. ((IFormattable[])[scale, cells, threads]).Select(value => value.ToString(null, CultureInfo.InvariantCulture))];
        string own = Path.Combine(AppContext.BaseDirectory, "Dewstone.Benchmarks.dll");
        double[] said = [.. MeasuredProcess.Run("dotnet", [own, Word, .. words]).Output.Split(' ').Select(text => double.Parse(text, CultureInfo.InvariantCulture))];
        return new ScalingPoint((long)said[0], (long)said[1], said[2], said[3], said[4], said[5], said[6]);
    }

    /// <summary>The median of each figure.</summary>
    /// <param name="points">Runs of the same point.</param>
    /// <returns>The point.</returns>
    public static ScalingPoint MedianOf(ScalingPoint[] points)
    {
        double[] middle = [.. points[0].Figures.Select((_, figure) => Measured.MedianOf(points.Select(point => point.Figures[figure])))];
        return new ScalingPoint(points[0].Voxels, points[0].Cells, middle[0], middle[1], middle[2], middle[3], middle[4]);
    }

    /// <summary>Measures in this process, after a small cube to warm up, and prints the figures on one line.</summary>
    /// <param name="words">Scale, cells, threads.</param>
    public static void Print(string[] words)
    {
        double scale = double.Parse(words[0], CultureInfo.InvariantCulture);
        int cells = int.Parse(words[1], CultureInfo.InvariantCulture);
        Parallelism threads = new(int.Parse(words[2], CultureInfo.InvariantCulture));
        Measure(ScaledCube.Of(0.5), 4, threads);
        ScalingPoint point = Measure(ScaledCube.Of(scale), cells, threads);
        Console.WriteLine(string.Join(' ', ((double[])[point.Voxels, point.Cells, .. point.Figures]).Select(value => value.ToString("R", CultureInfo.InvariantCulture))));
    }

    private static ScalingPoint Measure(JobDescription cube, int cells, Parallelism threads)
    {
        CompiledJob job = null!;
        double compile = Seconds(() => job = CompileBenchmarks.Of(new ReadResult(cube, [], new SourceMaps(), []), cells, threads));
        double files = Seconds(() => CompileBenchmarks.FilesOf(job, threads));
        double peak = MeasuredProcess.OwnPeak();
        ReefShape shape = ReefShapeBuilder.Build(cube.Unit).Shape;
        DoseResult doses = null!;
        double correction = Seconds(() => doses = DoseSolver.Solve(cube, shape, job.Placement, job.Lattice, new DoseSolverOptions(), threads, null, CancellationToken.None));
        (_, DoseSchedule schedule) = TimelineBuilder.Build(cube, job.Lattice, doses.Doses);
        BedProperties bed = BedProperties.From(cube.Mix, cube.LooseDensity, cube.BedTemperature);
        WettingProblem problem = WettingProblem.Of(doses.Doses, job.Moisture.Grid, schedule, bed);
        double wetting = Seconds(() => WettingSolver.Solve(problem, threads, null, CancellationToken.None));
        return new ScalingPoint(job.Lattice.Count, job.Moisture.Hardened.Length, compile, correction, wetting, files, peak);
    }

    private static double Seconds(Func<object> work)
    {
        Stopwatch watch = Stopwatch.StartNew();
        GC.KeepAlive(work());
        return watch.Elapsed.TotalSeconds;
    }
}
