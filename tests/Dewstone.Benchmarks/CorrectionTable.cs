using System.Diagnostics;
using System.Globalization;
using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Inspection;
using Dewstone.Compute.Numerics;
using Dewstone.Compute.Sequencing;
using Dewstone.Compute.Tests.Dosing;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;
using Dewstone.Reading;

namespace Dewstone.Benchmarks;

/// <summary>Plain against corrected doses on the reference bodies and the examples, judged on 8 cells a voxel: the table of the contributors' guide.</summary>
internal static class CorrectionTable
{
    private const int JudgedCells = 8;
    private static readonly Parallelism Threads = new(2);

    /// <summary>Prints the table.</summary>
    /// <param name="words">
    /// Parts of the names of bodies, or none for all; name=value tries another constant of the rule; "history" prints every solve.
    /// </param>
    public static void Print(string[] words)
    {
        CorrectionRule rule = new();
        foreach (string[] pair in words.Where(word => word.Contains('=', StringComparison.Ordinal)).Select(word => word.Split('=')))
        {
            typeof(CorrectionRule).GetProperty(pair[0])!.SetValue(rule, double.Parse(pair[1], CultureInfo.InvariantCulture));
        }

        bool history = words.Contains("history");
        words = [.. words.Where(word => word != "history" && !word.Contains('=', StringComparison.Ordinal))];
        Console.WriteLine("| body | doses | mean mm | p95 mm | deep unset % | w/c mean | in band | shape match | volume % | water L | clear loss mm | solves | s | CPU s |");
        Console.WriteLine("|---|---|---|---|---|---|---|---|---|---|---|---|---|---|");
        foreach ((string name, Func<JobDescription> job) in Bodies())
        {
            if (words.Length == 0 || words.Any(word => name.Contains(word, StringComparison.Ordinal)))
            {
                Row(name, job(), rule, correct: false, history);
                Row(name, job(), rule, correct: true, history);
            }
        }
    }

    /// <summary>The bodies, by name.</summary>
    public static IEnumerable<(string Name, Func<JobDescription> Job)> Bodies()
    {
        yield return ("cube, straight", Targets.Cube);
        yield return ("cube, shifted", () => Shifted(Targets.Cube()));
        yield return ("block 900 mm", Targets.Block);
        yield return ("block 900 mm, shifted", () => Shifted(Targets.Block()));
        yield return ("thin walls", Targets.ThinWalls);
        yield return ("thin walls, shifted", () => Shifted(Targets.ThinWalls()));
        foreach (string example in (string[])["wrack-block", "tide-sill", "oyster-step"])
        {
            yield return ("example " + example, () => Example(example));
        }
    }

    private static JobDescription Shifted(JobDescription job) => job with { Unit = job.Unit with { Place = job.Unit.Place with { ShiftedLayers = true } } };

    internal static JobDescription Example(string name)
    {
        string path = Checkout.Unit(name);
        return DescriptionReader.ReadJob(path).Job ?? throw new InvalidOperationException($"{path} does not read.");
    }

    private static void Row(string name, JobDescription job, CorrectionRule rule, bool correct, bool history)
    {
        PlacementResult place = Placer.Place(job, JudgedCells);
        ReefShape shape = ReefShapeBuilder.Build(job.Unit).Shape;
        Lattice lattice = place.Lattice!;
        DoseSolverOptions options = new() { Correct = correct, Rule = rule };
        TimeSpan before = Process.GetCurrentProcess().UserProcessorTime;
        Stopwatch watch = Stopwatch.StartNew();
        DoseResult doses = DoseSolver.Solve(job, shape, place.Placement!, lattice, options, Threads, null, CancellationToken.None);
        double wall = watch.Elapsed.TotalSeconds, cpu = (Process.GetCurrentProcess().UserProcessorTime - before).TotalSeconds;

        BedProperties bed = BedProperties.From(job.Mix, job.LooseDensity, job.BedTemperature);
        (_, DoseSchedule schedule) = TimelineBuilder.Build(job, lattice, doses.Doses);
        MoistureResult moisture = WettingSolver.Solve(WettingProblem.Of(doses.Doses, place.Cells!, schedule, bed), Threads, null, CancellationToken.None);
        TargetField target = Voxelizer.Voxelize(shape, place.Placement!, place.Cells!, Threads, null, CancellationToken.None);
        HardenedSurface hardened = HardenedSurface.Of(moisture, bed.Law, Threads);
        SurfaceDeviationReport surface = SurfaceDeviation.Measure(shape, place.Placement!, target, moisture, hardened, Threads);
        OpeningPassage[] passages = new OpeningPassages(shape, place.Placement!, SolidField.Of(target, Threads))
            .Measure(SolidField.Of(hardened, Threads), Threads);
        SolidSummary solid = SolidMeasure.Measure(target, moisture, hardened, job.Unit.Require.WaterCement);
        string losses = string.Join(" / ", passages.Select(p => p.Clear).Where(c => c.IsTunnel).Select(t => string.Create(CultureInfo.InvariantCulture, $"{t.LossMetres * 1e3:0.0}")));
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"| {name} | {(correct ? "corrected" : "best plain")} | {surface.MeanMetres * 1e3:0.00} | {surface.Percentile95Metres * 1e3:0.0} | {surface.DeepUnsetShare * 100:0.0000} | {solid.MeanWaterCement:0.000} | {solid.ShareInBand:0.000} | {solid.ShapeMatch:0.0000} | {(surface.HardenedCubicMetres / surface.TargetCubicMetres - 1) * 100:+0.0;-0.0} | {doses.Doses.TotalCentiMillilitres / 1e5:0.0} | {losses} | {doses.History.Count} | {wall:0.0} | {cpu:0.0} |"));
        if (history)
        {
            foreach (DoseStep step in doses.History)
            {
                Console.WriteLine(string.Create(
                    CultureInfo.InvariantCulture, $"  {step.Solve} {step.Kind} {step.CellsPerPitch} {step.Objective:0.000} {step.WaterMillilitres / 1000:0.0}"));
            }
        }
    }
}
