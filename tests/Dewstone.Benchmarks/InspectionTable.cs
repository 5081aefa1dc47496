using System.Diagnostics;
using System.Globalization;
using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Inspection;
using Dewstone.Compute.Numerics;
using Dewstone.Compute.Sequencing;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Benchmarks;

/// <summary>What each check of the predicted solid costs on the 900 mm block at 8 cells a voxel, on one and on two threads.</summary>
internal static class InspectionTable
{
    private const int Rounds = 5;

    /// <summary>Prints the table.</summary>
    public static void Print()
    {
        JobDescription job = CorrectionTable.Example("wrack-block");
        PlacementResult place = Placer.Place(job, 8);
        (Lattice lattice, UnitPlacement placement) = (place.Lattice!, place.Placement!);
        Parallelism two = new(2);
        ReefShape shape = ReefShapeBuilder.Build(job.Unit).Shape;
        TargetField target = Voxelizer.Voxelize(shape, placement, place.Cells!, two, null, CancellationToken.None);
        DosePlan doses = PlainDoser.Dose(job, lattice, target).Doses;
        BedProperties bed = BedProperties.From(job.Mix, job.LooseDensity, job.BedTemperature);
        (_, DoseSchedule schedule) = TimelineBuilder.Build(job, lattice, doses);
        MoistureResult moisture = WettingSolver.Solve(WettingProblem.Of(doses, place.Cells!, schedule, bed), two, null, CancellationToken.None);
        Console.WriteLine($"{place.Cells!.Nx} x {place.Cells.Ny} x {place.Cells.Nz} cells");
        foreach (int threads in (int[])[1, 2])
        {
            Parallelism parallelism = new(threads);
            SolidField wanted = SolidField.Of(target, parallelism), hardened = SolidField.Of(moisture, bed.SurfaceExponent, bed.Law.Residual, parallelism);
            bool[] pockets = DryPockets.Of(target, moisture, parallelism);
            Time(threads, "wanted field", () => SolidField.Of(target, parallelism));
            Time(threads, "hardened field", () => SolidField.Of(moisture, bed.SurfaceExponent, bed.Law.Residual, parallelism));
            Time(threads, "mesh", () => hardened.Mesh(parallelism));
            Time(threads, "bins", () => new NearestTriangle(hardened.Mesh(parallelism), 0.0125));
            Time(threads, "pockets", () => DryPockets.Of(target, moisture, parallelism));
            Time(threads, "deviation", () => SurfaceDeviation.Measure(shape, placement, wanted, hardened, pockets, parallelism));
            Time(threads, "openings", () => new OpeningPassages(shape, placement, wanted, hardened).Measure(parallelism));
            Time(threads, "thickness", () => LocalThickness.Of(hardened.Distances, hardened.Cells, hardened.Size, parallelism));
            foreach (OpeningPassage p in new OpeningPassages(shape, placement, wanted, hardened).Measure(parallelism))
            {
                Console.WriteLine($"  {p.Clear.Name} {p.Clear.Hollow} {p.Clear.WantedMetres * 1e3:0.0} {p.Clear.PredictedMetres * 1e3:0.0} {p.Clear.Narrowest} {p.Mouths}");
            }
        }
    }

    private static void Time(int threads, string name, Func<object> work)
    {
        double best = double.PositiveInfinity;
        for (int round = 0; round < Rounds; round++)
        {
            Stopwatch watch = Stopwatch.StartNew();
            GC.KeepAlive(work());
            best = Math.Min(best, watch.Elapsed.TotalMilliseconds);
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {name} | {threads} | {best:0} |"));
    }
}
