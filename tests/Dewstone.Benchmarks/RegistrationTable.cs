using System.Diagnostics;
using System.Globalization;
using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Inspection;
using Dewstone.Compute.Numerics;
using Dewstone.Compute.Sequencing;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Benchmarks;

/// <summary>What registration chooses for the reference bodies and the examples, and what it does to corrected doses judged on 8 cells a voxel.</summary>
/// <remarks>The misfit is the least objective of ten corrected solves on 4 cells, as the dose solver begins.</remarks>
internal static class RegistrationTable
{
    private const int JudgedCells = 8;
    private static readonly Parallelism Threads = new(2);

    /// <summary>Prints the table.</summary>
    /// <param name="words">Parts of the names of bodies, or none for all; "trials" prints every place tried; "choice" leaves out the judging.</param>
    public static void Print(string[] words)
    {
        bool trials = words.Contains("trials"), choice = words.Contains("choice");
        words = [.. words.Where(word => word is not ("trials" or "choice"))];
        Console.WriteLine("| body | place | misfit at 4 cells L | solves | s | CPU s | mean mm | p95 mm | deep unset % | shape match | clear loss mm |");
        Console.WriteLine("|---|---|---|---|---|---|---|---|---|---|---|");
        foreach ((string name, Func<JobDescription> body) in CorrectionTable.Bodies())
        {
            JobDescription job = body();
            if (job.Unit.Place.ShiftedLayers is null && (words.Length == 0 || words.Any(word => name.Contains(word, StringComparison.Ordinal))))
            {
                Rows(name.Replace(", straight", "", StringComparison.Ordinal), job, trials, choice);
            }
        }
    }

    private static void Rows(string name, JobDescription job, bool trials, bool choice)
    {
        ReefShape shape = ReefShapeBuilder.Build(job.Unit).Shape;
        Registrar.Choose(job, shape, Threads, null, CancellationToken.None);
        TimeSpan before = Process.GetCurrentProcess().UserProcessorTime;
        Stopwatch watch = Stopwatch.StartNew();
        Registration chosen = Registrar.Choose(job, shape, Threads, null, CancellationToken.None);
        double wall = watch.Elapsed.TotalSeconds, cpu = (Process.GetCurrentProcess().UserProcessorTime - before).TotalSeconds;
        PlacementWish middle = chosen.Trials[0].Wish;
        Row(name, job, shape, middle, "", choice);
        Row(
            name, job, shape, chosen.Wish, string.Create(CultureInfo.InvariantCulture, $"{chosen.Solves} | {wall:0.00} | {cpu:0.00}"), choice);
        foreach (RegistrationTrial trial in trials ? chosen.Trials : [])
        {
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"  {Named(trial.Wish)} {trial.ObjectiveLitres:0.00} L after {trial.Solves} solves, {trial.Layers} layers"));
        }
    }

    private static void Row(string name, JobDescription job, ReefShape shape, PlacementWish wish, string cost, bool choice)
    {
        cost = cost.Length == 0 ? " | | " : cost;
        if (choice)
        {
            Console.WriteLine($"| {name} | {Named(wish)} | | {cost} |");
            return;
        }

        PlacementResult place = Placer.Place(job, JudgedCells, wish);
        DoseResult result = DoseSolver.Solve(job, shape, place.Placement!, place.Lattice!, new DoseSolverOptions(), Threads, null, CancellationToken.None);
        DosePlan doses = result.Doses;
        double misfit = result.History.Where(step => step is { Kind: DoseStepKind.Corrected, CellsPerPitch: RegistrationField.Cells }).Min(step => step.Objective);
        BedProperties bed = BedProperties.From(job.Mix, job.LooseDensity, job.BedTemperature);
        (_, DoseSchedule schedule) = TimelineBuilder.Build(job, place.Lattice!, doses);
        MoistureResult moisture = WettingSolver.Solve(WettingProblem.Of(doses, place.Cells!, schedule, bed), Threads, null, CancellationToken.None);
        TargetField target = Voxelizer.Voxelize(shape, place.Placement!, place.Cells!, Threads, null, CancellationToken.None);
        HardenedSurface hardened = HardenedSurface.Of(moisture, bed.Law, Threads);
        SurfaceDeviationReport surface = SurfaceDeviation.Measure(shape, place.Placement!, target, moisture, hardened, Threads);
        SolidSummary solid = SolidMeasure.Measure(target, moisture, hardened, job.Unit.Require.WaterCement);
        string losses = string.Join(" / ", new OpeningPassages(
            shape, place.Placement!, SolidField.Of(target, Threads))
            .Measure(SolidField.Of(hardened, Threads), Threads).Select(p => p.Clear).Where(c => c.IsTunnel).Select(t => string.Create(CultureInfo.InvariantCulture, $"{t.LossMetres * 1e3:0.0}")));
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"| {name} | {Named(wish)} | {misfit:0.00} | {cost} | {surface.MeanMetres * 1e3:0.00} | {surface.Percentile95Metres * 1e3:0.0} | {surface.DeepUnsetShare * 100:0.0000} | {solid.ShapeMatch:0.0000} | {losses} |"));
    }

    private static string Named(PlacementWish wish)
    {
        Point3 shift = wish.Shift ?? default;
        string layers = wish.ShiftedLayers == true ? "shifted" : "straight", turn = wish.QuarterTurns is > 0 and { } turns ? $", turn {90 * turns}" : "";
        return string.Create(CultureInfo.InvariantCulture, $"{layers}, {shift.X * 1e3:0.#} {shift.Y * 1e3:0.#} {shift.Z * 1e3:0.#} mm{turn}");
    }
}
