using System.Globalization;
using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Sequencing;
using Dewstone.Compute.Tests.Dosing;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Benchmarks;

/// <summary>What dead needles cost the cube, before and after its doses are corrected around them, judged on 8 cells a voxel.</summary>
internal static class DeadNeedleTable
{
    private static readonly Parallelism Threads = new(2);

    public static void Print()
    {
        JobDescription sound = Targets.Cube();
        PlacementResult place = Placer.Place(sound, 8);
        Lattice lattice = place.Lattice!;
        ReefShape shape = ReefShapeBuilder.Build(sound.Unit).Shape;
        TargetField target = Voxelizer.Voxelize(shape, place.Placement!, place.Cells!, Threads, null, CancellationToken.None);
        DosePlan doses = Solve(sound, shape, place);
        Console.WriteLine("| dead needles of the cube | region | unset with all needles L | doses untouched L | corrected L | won back % |");
        Console.WriteLine("|---|---|---|---|---|---|");

        // The unit's voxel (2, 2), counted from 0, is the window's (4, 4): two pitches of bed lie around the unit.
        (int Column, int Row) one = new DoseRounder(sound, lattice).Needle(lattice.Index(4, 4, 0));
        Row("one column", "3 x 3 pitches around it", [one], (3, 6));
        ulong state = 5;
        List<(int, int)> dead = [];
        for (int needle = 0; needle < sound.Printer.Head.Columns * sound.Printer.Head.Rows; needle++)
        {
            state = unchecked(state * 6364136223846793005UL + 1442695040888963407UL);
            if ((state >> 40) % 100 < 3)
            {
                dead.Add((needle % sound.Printer.Head.Columns + 1, needle / sound.Printer.Head.Columns + 1));
            }
        }

        Row($"{dead.Count} of {sound.Printer.Head.Columns * sound.Printer.Head.Rows} at random", "whole cube", dead, (0, lattice.Columns));

        void Row(string name, string region, IReadOnlyList<(int Column, int Row)> needles, (int First, int End) voxels)
        {
            JobDescription blocked = sound with
            {
                Needles = new NeedleTable
                {
                    Needles = [.. needles.Select(n => new NeedleState { Column = n.Column, Row = n.Row, Condition = NeedleCondition.Blocked })],
                },
            };
            DosePlan untouched = new DoseRounder(blocked, lattice).Round(Array.ConvertAll(doses.CentiMillilitres, dose => dose / 100.0));
            double whole = Unset(sound, doses), before = Unset(blocked, untouched), after = Unset(blocked, Solve(blocked, shape, place));
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"| {name} | {region} | {whole:0.000} | {before:0.000} | {after:0.000} | {(before - after) / (before - whole) * 100:0} |"));

            double Unset(JobDescription job, DosePlan plan) => UnsetLitres(job, lattice, target, plan, voxels);
        }
    }

    private static DosePlan Solve(JobDescription job, ReefShape shape, PlacementResult place) => DoseSolver.Solve(
        job, shape, place.Placement!, place.Lattice!, new DoseSolverOptions(), Threads, null, CancellationToken.None).Doses;

    private static double UnsetLitres(JobDescription job, Lattice lattice, TargetField target, DosePlan plan, (int First, int End) voxels)
    {
        (_, DoseSchedule schedule) = TimelineBuilder.Build(job, lattice, plan);
        BedProperties bed = BedProperties.From(job.Mix, job.LooseDensity, job.BedTemperature);
        CellGrid grid = target.Grid;
        MoistureResult moisture = WettingSolver.Solve(WettingProblem.Of(plan, grid, schedule, bed), Threads, null, CancellationToken.None);
        int first = voxels.First * grid.CellsPerPitch, end = voxels.End * grid.CellsPerPitch;
        double cells = 0.0;
        for (int i = 0; i < target.Fraction.Length; i++)
        {
            int x = i % grid.Nx, y = i / grid.Nx % grid.Ny;
            cells += x >= first && x < end && y >= first && y < end && moisture.Hardened[i] == 0 ? target.Fraction[i] : 0.0;
        }

        return cells * grid.CellCubicMetres * 1000.0;
    }
}
