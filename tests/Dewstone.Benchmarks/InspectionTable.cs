using System.Diagnostics;
using System.Globalization;
using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Inspection;
using Dewstone.Compute.Numerics;
using Dewstone.Compute.Sequencing;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Benchmarks;

/// <summary>What each check of the predicted solid costs at 8 cells a voxel, and what the examples' checks say with plain doses.</summary>
internal static class InspectionTable
{
    private const int Rounds = 3;

    private static readonly Parallelism Two = new(2);

    /// <summary>Prints the table.</summary>
    /// <param name="words">"times" for the costs on the block, else names of examples, or none for all.</param>
    public static void Print(string[] words)
    {
        if (words is ["times"])
        {
            PrintTimes();
            return;
        }

        foreach (string example in words.Length > 0 ? words : ["wrack-block", "tide-sill", "oyster-step"])
        {
            Subject subject = Subject.Of(example);
            InspectionReport report = subject.Inspect(Two);
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{example}: walls {report.Wall.Percentile5Metres * 1e3:0.0} / {report.Wall.MedianMetres * 1e3:0.0} / {report.Wall.Percentile95Metres * 1e3:0.0} mm; match {report.ShapeMatch.Overlap:0.000}, {report.ShapeMatch.MassErrorKilograms:0.0} kg, mean {report.ShapeMatch.MeanMetres * 1e3:0.00} mm"));
            foreach (ClearOpening opening in report.ClearOpenings)
            {
                Console.WriteLine(string.Create(
                    CultureInfo.InvariantCulture, $"  clear {opening.Name} {opening.Hollow + 1}: {opening.WantedMetres * 1e3:0.0} -> {opening.PredictedMetres * 1e3:0.0} mm"));
            }

            foreach (RequirementResult result in report.Requirements)
            {
                Console.WriteLine(string.Create(
                    CultureInfo.InvariantCulture, $"  {result.Id} {result.Feature}: {result.Value:0.####} {result.Op} {result.Limit:0.####} {result.Unit} {(result.Met ? "met" : "MISSED")}"));
            }

            foreach (Diagnostic finding in report.Findings)
            {
                Console.WriteLine($"  {finding.Severity} {finding.Code}: {finding.Message} [{finding.Key?.Path}]");
            }
        }
    }

    private static void PrintTimes()
    {
        Subject subject = Subject.Of("wrack-block");
        foreach (int threads in (int[])[1, 2])
        {
            Parallelism parallelism = new(threads);
            SolidField wanted = SolidField.Of(subject.Target, parallelism);
            SolidField hardened = SolidField.Of(subject.Surface(parallelism), parallelism);
            PredictedSolid solid = new(subject.Moisture, hardened, subject.Placement, subject.Job.LooseDensity, parallelism);
            Time(threads, "distances of the wanted solid", () => SolidField.Of(subject.Target, parallelism));
            Time(threads, "distances of the hardened solid", () => SolidField.Of(subject.Surface(parallelism), parallelism));
            Time(threads, "pieces of hardened and loose mix", () => new PredictedSolid(subject.Moisture, hardened, subject.Placement, subject.Job.LooseDensity, parallelism));
            Time(threads, "clear openings", () => new OpeningPassages(subject.Shape, subject.Placement, wanted).Measure(hardened, parallelism));
            Time(threads, "surface deviation", () => SurfaceDeviation.Measure(
                subject.Shape, subject.Placement, wanted, hardened, DryPockets.Of(subject.Target, solid.Voids), parallelism));
            Time(threads, "local thickness, all cells", () => LocalThickness.Of(hardened.Distances, hardened.Cells, hardened.Size, parallelism));
            Time(threads, "local thickness, every second cell", () => WallThickness.Of(solid).Below(0.5));
            Time(threads, "necks, thickness included", () => NeckCheck.Check(subject.Job, solid));
            Time(threads, "trapped mix", () => TrappedMixCheck.Check(subject.Job, solid));
            Time(threads, "water/cement", () => WaterCementCheck.Check(subject.Job, solid));
            Time(threads, "loose pieces", () => LoosePieceCheck.Check(subject.Job, solid));
            Time(threads, "keep zones and lifting places", () => SoundZoneCheck.Check(subject.Job, subject.Shape, wanted, solid));
            Time(threads, "all", () => subject.Inspect(parallelism));
        }
    }

    private static void Time(int threads, string name, Func<object> work)
    {
        double wall = double.PositiveInfinity, cpu = double.PositiveInfinity;
        for (int round = 0; round < Rounds; round++)
        {
            TimeSpan before = Process.GetCurrentProcess().TotalProcessorTime;
            Stopwatch watch = Stopwatch.StartNew();
            GC.KeepAlive(work());
            wall = Math.Min(wall, watch.Elapsed.TotalMilliseconds);
            cpu = Math.Min(cpu, (Process.GetCurrentProcess().TotalProcessorTime - before).TotalMilliseconds);
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {name} | {threads} | {wall:0} | {cpu:0} |"));
    }

    private sealed record Subject(JobDescription Job, ReefShape Shape, UnitPlacement Placement, TargetField Target, MoistureResult Moisture, BedProperties Bed)
    {
        public static Subject Of(string example)
        {
            JobDescription job = CorrectionTable.Example(example);
            PlacementResult place = Placer.Place(job, 8);
            ReefShape shape = ReefShapeBuilder.Build(job.Unit).Shape;
            TargetField target = Voxelizer.Voxelize(shape, place.Placement!, place.Cells!, Two, null, CancellationToken.None);
            DosePlan doses = PlainDoser.Dose(job, place.Lattice!, target).Doses;
            BedProperties bed = BedProperties.From(job.Mix, job.LooseDensity, job.BedTemperature);
            (_, DoseSchedule schedule) = TimelineBuilder.Build(job, place.Lattice!, doses);
            MoistureResult moisture = WettingSolver.Solve(WettingProblem.Of(doses, place.Cells!, schedule, bed), Two, null, CancellationToken.None);
            return new Subject(job, shape, place.Placement!, target, moisture, bed);
        }

        public HardenedSurface Surface(Parallelism parallelism) => HardenedSurface.Of(Moisture, Bed.Law, parallelism);

        public InspectionReport Inspect(Parallelism parallelism)
        {
            HardenedSurface surface = Surface(parallelism);
            SolidSummary summary = SolidMeasure.Measure(Target, Moisture, surface, Job.Unit.Require.WaterCement);
            return Inspector.Inspect(Job, Shape, Placement, Target, Moisture, surface, summary, parallelism, CancellationToken.None);
        }
    }
}
