using System.Diagnostics;
using System.Globalization;
using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Inspection;
using Dewstone.Compute.Sequencing;
using Dewstone.Compute.Tests.Dosing;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Results;

namespace Dewstone.Benchmarks;

/// <summary>Prints plain against corrected doses on the reference bodies, judged on 8 cells a voxel, as the contributors' guide shows it.</summary>
internal static class CorrectionTable
{
    private static readonly Parallelism Threads = new(2);

    public static void Print()
    {
        Console.WriteLine("| body | doses | match | mean mm | p95 mm | deep unset % | w/c | in band % | volume % | clear loss mm | water L | solves | s |");
        Console.WriteLine("|---|---|---|---|---|---|---|---|---|---|---|---|---|");
        Rows("small cube (warm-up)", Targets.SmallCube());
        Rows("cube", Targets.Cube());
        Rows("cube, layers shifted", Shifted(Targets.Cube()));
        Rows("block", Targets.Block());
        Rows("thin walls", Targets.ThinWalls());
    }

    private static JobDescription Shifted(JobDescription job) =>
        job with { Unit = job.Unit with { Place = new PlacementWish { ShiftedLayers = true } } };

    private static void Rows(string name, JobDescription job)
    {
        PlacementResult place = Placer.Place(job, 8);
        if (place is not { Placement: { } placement, Lattice: { } lattice, Cells: { } cells })
        {
            throw new InvalidOperationException($"'{name}' finds no place on its printer.");
        }

        ReefShape shape = ReefShapeBuilder.Build(job.Unit).Shape;
        TargetField target = Voxelizer.Voxelize(shape, placement, cells, Threads, null, CancellationToken.None);
        foreach (bool correct in new[] { false, true })
        {
            Stopwatch watch = Stopwatch.StartNew();
            DoseResult result = DoseSolver.Solve(
                job, shape, placement, lattice, new DoseSolverOptions { Correct = correct }, Threads, null, CancellationToken.None);
            double seconds = watch.Elapsed.TotalSeconds;
            (_, DoseSchedule schedule) = TimelineBuilder.Build(job, lattice, result.Doses);
            BedProperties bed = BedProperties.From(job.Mix, job.LooseDensity, job.BedTemperature);
            MoistureResult moisture = WettingSolver.Solve(
                WettingProblem.Of(result.Doses, cells, schedule, bed), Threads, null, CancellationToken.None);
            SurfaceDeviationReport surface = SurfaceDeviation.Measure(
                shape, placement, target, moisture, bed.SurfaceExponent, bed.Law.Residual, Threads);
            SolidSummary solid = SolidMeasure.Measure(target, moisture, job.Unit.Require.WaterCement);
            string losses = string.Join(' ', surface.Tunnels.Select(t => (t.LossMetres * 1000).ToString("0.0", CultureInfo.InvariantCulture)));
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"| {name} | {(correct ? "corrected" : "plain")} | {solid.ShapeMatch:0.000} | {surface.MeanMetres * 1000:0.0} | {surface.Percentile95Metres * 1000:0.0} | {surface.DeepUnsetShare * 100:0.00} | {solid.MeanWaterCement:0.000} | {solid.ShareInBand * 100:0} | {(surface.HardenedCubicMetres / surface.TargetCubicMetres - 1) * 100:+0.0;-0.0} | {losses} | {result.Doses.TotalCentiMillilitres / 1e5:0.0} | {result.History.Count} | {seconds:0.0} |"));
        }
    }
}
