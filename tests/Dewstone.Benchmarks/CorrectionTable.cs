using System.Diagnostics;
using System.Reflection;
using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Inspection;
using Dewstone.Compute.Tests.Dosing;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Benchmarks;

internal static class CorrectionTable
{
    private static readonly Parallelism Two = new(2);

    public static void Try(string[] args)
    {
        JobDescription job = args[0] switch { "cube" => Targets.Cube(), "block" => Targets.Block(), "thin" => Targets.ThinWalls(), _ => Targets.SmallCube() };
        if (args[1] == "shifted") { job = job with { Unit = job.Unit with { Place = new PlacementWish { ShiftedLayers = true } } }; }
        PlacementResult place = Placer.Place(job, 8);
        ReefShape shape = ReefShapeBuilder.Build(job.Unit).Shape;
        TargetField target = Voxelizer.Voxelize(shape, place.Placement!, place.Cells!, Two, null, default);
        Console.WriteLine($"{args[0]} target {target.CubicMetres * 1000:0.0} L share {target.CubicMetres / (job.Unit.OuterBox.X * job.Unit.OuterBox.Y * job.Unit.OuterBox.Z):0.000}");
        foreach (string set in args.Skip(2).Where(a => a != "trace=1"))
        {
            Tuning t = new();
            foreach (string pair in set.Split(',', StringSplitOptions.RemoveEmptyEntries))
            {
                string[] kv = pair.Split('=');
                if (kv[0] == "v") { continue; }
                PropertyInfo f = typeof(Tuning).GetProperty(kv[0])!;
                f.SetValue(t, f.PropertyType == typeof(int) ? int.Parse(kv[1]) : f.PropertyType == typeof(bool) ? (object)(kv[1] == "1") : double.Parse(kv[1]));
            }

            TimeSpan cpu = Process.GetCurrentProcess().UserProcessorTime;
            Stopwatch w = Stopwatch.StartNew();
            (DosePlan plan, List<string> log) = Trial.Run(job, shape, place.Placement!, place.Lattice!, t, Two);
            double user = (Process.GetCurrentProcess().UserProcessorTime - cpu).TotalSeconds, wall = w.Elapsed.TotalSeconds;
            if (set.Contains("v=")) { foreach (string line in log) { Console.WriteLine("   " + line); } }
            Console.WriteLine(set + $"  cpu {user:0.0} wall {wall:0.0}  last: " + log[^1]);
            Report(job, shape, place, target, plan);
        }
    }

    private static void Report(JobDescription job, ReefShape shape, PlacementResult place, TargetField target, DosePlan plan)
    {
        MoistureResult m = Trial.Wet(job, place.Lattice!, plan, place.Cells!, Two);
        Compute.Wetting.BedProperties bed = Compute.Wetting.BedProperties.From(job.Mix, job.LooseDensity, job.BedTemperature);
        SurfaceDeviationReport r = SurfaceDeviation.Measure(shape, place.Placement!, target, m, bed.SurfaceExponent, bed.Law.Residual, Two);
        SolidSummary s = SolidMeasure.Measure(target, m, job.Unit.Require.WaterCement);
        Console.WriteLine($"    mean {r.MeanMetres * 1e3:0.00} p95 {r.Percentile95Metres * 1e3:0.00} signed {r.SignedMeanMetres * 1e3:0.00} deep {r.DeepUnsetShare * 100:0.000}% wc {s.MeanWaterCement:0.000} iou {s.ShapeMatch:0.0000} vol {(s.HardenedCubicMetres / s.TargetCubicMetres - 1) * 100:+0.0;-0.0}% band {s.ShareInBand:0.000} maxwc {s.LargestWaterCement:0.00} water {plan.TotalCentiMillilitres / 1e5:0.0} pockets {r.PocketSquareMetres:0.000} loss {string.Join(' ', r.Tunnels.Select(x => $"{x.LossMetres * 1e3:0.0}"))}");
    }
}
