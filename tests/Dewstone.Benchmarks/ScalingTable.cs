using System.Diagnostics;
using System.Globalization;
using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Sequencing;
using Dewstone.Compute.Tests.Dosing;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Benchmarks;

/// <summary>How the time of the correction and of the last wetting grows with the number of voxels: the crossed cube at half, whole and one and a half size.</summary>
internal static class ScalingTable
{
    private const int Runs = 3;
    private const int LastCells = 8;
    private static readonly Parallelism Threads = new(2);

    public static void Print()
    {
        Console.WriteLine("| cube m | voxels | solves | correction s | last wetting s | both, ms a thousand voxels |");
        Console.WriteLine("|---|---|---|---|---|---|");
        List<(double Voxels, double Correction, double Last)> rows = [];
        Measure(Cube(0.5));
        foreach (double scale in (double[])[0.5, 1.0, 1.5])
        {
            JobDescription job = Cube(scale);
            (int voxels, int solves, double correction, double last) = Measure(job);
            (double[] corrections, double[] lasts) = ([correction, 0, 0], [last, 0, 0]);
            for (int run = 1; run < Runs; run++)
            {
                (_, _, corrections[run], lasts[run]) = Measure(job);
            }

            Array.Sort(corrections);
            Array.Sort(lasts);
            rows.Add((voxels, corrections[Runs / 2], lasts[Runs / 2]));
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"| {job.Unit.OuterBox.X:0.000} | {voxels} | {solves} | {rows[^1].Correction:0.00} | {rows[^1].Last:0.00} | {(rows[^1].Correction + rows[^1].Last) / voxels * 1e6:0} |"));
        }

        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"Slope of log seconds over log voxels, least squares: correction {Slope(rows.Select(r => (r.Voxels, r.Correction))):0.00}, last wetting {Slope(rows.Select(r => (r.Voxels, r.Last))):0.00}."));
    }

    // Outer box, rounding, tunnels and hollows all scaled; the bin holds two spare pitches to each side and on top, the head covers it.
    private static JobDescription Cube(double scale)
    {
        JobDescription cube = Targets.Cube();
        double pitch = cube.Printer.Grid.Pitch.Metres;
        int side = (int)Math.Round(18 * scale);
        Length Scaled(Length length) => new(length.Metres * scale);
        Point3 Moved(Point3 point) => new(point.X * scale, point.Y * scale, point.Z * scale);
        return cube with
        {
            Unit = cube.Unit with
            {
                OuterBox = new Size3(side * pitch, side * pitch, side * pitch),
                Rounding = Scaled(cube.Unit.Rounding),
                Tunnels =
                [
                    .. cube.Unit.Tunnels.Cast<AxisTunnel>().Select(tunnel => tunnel with
                    {
                        At = Moved(tunnel.At),
                        Section = tunnel.Section is RectangularSection section
                            ? new RectangularSection(Scaled(section.Width), Scaled(section.Height), Scaled(section.Rounding))
                            : throw new InvalidOperationException("The cube's tunnels are rectangular."),
                    }),
                ],
                Cavities =
                [
                    .. cube.Unit.Cavities.Cast<FormedCavity>().Select(cavity => cavity with
                    {
                        Form = cavity.Form is SphereForm ball
                            ? new SphereForm { Centre = Moved(ball.Centre), Diameter = Scaled(ball.Diameter) }
                            : throw new InvalidOperationException("The cube's hollows are round."),
                    }),
                ],
            },
            Printer = cube.Printer with
            {
                Bin = new Bin(new Length((side + 6) * pitch), new Length((side + 6) * pitch), new Length((side + 4) * pitch)),
                Head = cube.Printer.Head with { Columns = side + 6, Rows = side + 6 },
            },
        };
    }

    private static (int Voxels, int Solves, double Correction, double Last) Measure(JobDescription job)
    {
        PlacementResult place = Placer.Place(job, LastCells);
        Lattice lattice = place.Lattice ?? throw new InvalidOperationException("The cube does not fit.");
        ReefShape shape = ReefShapeBuilder.Build(job.Unit).Shape;
        Stopwatch watch = Stopwatch.StartNew();
        DoseResult doses = DoseSolver.Solve(job, shape, place.Placement!, lattice, new DoseSolverOptions(), Threads, null, CancellationToken.None);
        double correction = watch.Elapsed.TotalSeconds;
        watch.Restart();
        (_, DoseSchedule schedule) = TimelineBuilder.Build(job, lattice, doses.Doses);
        BedProperties bed = BedProperties.From(job.Mix, job.LooseDensity, job.BedTemperature);
        WettingSolver.Solve(WettingProblem.Of(doses.Doses, place.Cells!, schedule, bed), Threads, null, CancellationToken.None);
        return (lattice.Count, doses.History.Count, correction, watch.Elapsed.TotalSeconds);
    }

    private static double Slope(IEnumerable<(double Voxels, double Seconds)> rows)
    {
        (double X, double Y)[] logs = [.. rows.Select(row => (Math.Log(row.Voxels), Math.Log(row.Seconds)))];
        double x = logs.Average(p => p.X), y = logs.Average(p => p.Y);
        return logs.Sum(p => (p.X - x) * (p.Y - y)) / logs.Sum(p => (p.X - x) * (p.X - x));
    }
}
