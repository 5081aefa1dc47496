using CsCheck;
using Dewstone.Compute.Dosing;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Dosing;

public sealed class PlainDoserTests
{
    private static (PlacementResult Placed, DoseResult Result) DoseBox(JobDescription job, int cells = 4)
    {
        PlacementResult placed = Placer.Place(job, cells);
        return (placed, PlainDoser.Dose(Samples.Pinned(job), placed.Lattice!, Samples.Target(placed.Cells!, Samples.InBox(placed.Placement!))));
    }

    [Fact]
    public void Whole_voxels_get_the_full_dose_and_the_bed_around_them_none()
    {
        (PlacementResult placed, DoseResult result) = DoseBox(Samples.Job(Samples.Box(0.2, 0.15, 0.1)));

        // 0.52 x 425 kg/m3 x 0.125 L = 27.625 mL; in steps of 0.1 mL 27.6.
        Assert.Equal(27.625, result.Nominal.Millilitres, 9);
        Lattice lattice = placed.Lattice!;
        for (int index = 0; index < lattice.Count; index++)
        {
            int i = index % lattice.Columns, j = index / lattice.Columns % lattice.Rows, k = index / (lattice.Columns * lattice.Rows);
            bool inside = i is >= 2 and < 6 && j is >= 2 and < 5 && k >= 1;
            Assert.Equal(inside ? 2760 : 0, result.Doses.CentiMillilitres[index]);
            Assert.Equal(inside ? 276 : 0, result.Doses.Steps[index]);
        }

        Assert.Equal(4 * 3 * 2 * 2760, result.Doses.TotalCentiMillilitres);
        Assert.Empty(result.Findings);
    }

    /// <summary>Sum of a dose table = water/cement x cement in the wanted solid, within half a pump step a voxel (exact balance before rounding).</summary>
    [Fact]
    public void Doses_sum_to_water_cement_times_the_cement_of_the_solid()
    {
        ReefUnit ball = Samples.Box(0.5, 0.5, 0.5);
        JobDescription job = Samples.Job(ball, printer: Samples.YardPrinter() with
        {
            Needle = Samples.YardPrinter().Needle with { Least = Volume.FromMillilitres(0.1) },
        });
        PlacementResult placed = Placer.Place(job, 8);
        TargetField target = Samples.Target(placed.Cells!, p => (placed.Placement!.ToUnit(p) - new Point3(0.25, 0.25, 0.25)).Norm < 0.25 ? 1 : 0);

        DoseResult result = PlainDoser.Dose(Samples.Pinned(job), placed.Lattice!, target);

        int dosed = result.Doses.CentiMillilitres.Count(d => d > 0);
        int slivers = result.VoxelFractions.Count(f => f is > 0 and < PlainDoser.FractionCut);
        double exact = 0.52 * 425 * target.CubicMetres * 1000;
        double tolerance = dosed * 0.05 + slivers * PlainDoser.FractionCut * result.Nominal.Millilitres;
        Assert.Equal(exact, result.Doses.TotalCentiMillilitres / 100.0, tolerance);
        Assert.True(tolerance < 0.006 * exact);
    }

    [Fact]
    public void Needle_gains_and_offsets_are_allowed_for()
    {
        NeedleTable table = new() { Needles = [new NeedleState { Column = 12, Row = 12, Gain = 0.9, OffsetMillilitres = 0.2 }] };
        (PlacementResult placed, DoseResult result) = DoseBox(Samples.Job(Samples.Box(0.1, 0.1, 0.05), needles: table));

        // Head column 12 stands over raster column 11, window column 2; (27.625 - 0.2) / 0.09 = 304.7, and 0.9 x 30.5 + 0.2 = 27.65.
        int index = placed.Lattice!.Index(2, 2, 1);
        Assert.Equal((305, 2765), (result.Doses.Steps[index], result.Doses.CentiMillilitres[index]));
        Assert.Equal(276, result.Doses.Steps[placed.Lattice.Index(3, 2, 1)]);
    }

    [Fact]
    public void Blocked_needle_gives_nothing_and_is_named_with_its_voxels()
    {
        NeedleTable table = new()
        {
            Needles =
            [
                new NeedleState { Column = 12, Row = 13, Condition = NeedleCondition.Blocked },
                new NeedleState { Column = 13, Row = 12, Condition = NeedleCondition.Limited },
                new NeedleState { Column = 1, Row = 1, Condition = NeedleCondition.Blocked },
            ],
        };
        (PlacementResult placed, DoseResult result) = DoseBox(Samples.Job(Samples.Box(0.1, 0.1, 0.15), needles: table));

        Lattice lattice = placed.Lattice!;
        Assert.All(Enumerable.Range(1, 3), k => Assert.Equal(0, result.Doses.CentiMillilitres[lattice.Index(2, 3, k)]));
        Assert.All(Enumerable.Range(1, 3), k => Assert.Equal(2760, result.Doses.CentiMillilitres[lattice.Index(3, 2, k)]));
        Assert.Equal(["DW4008", "DW4009"], result.Findings.Select(f => f.Code));
        Assert.Contains("12,13 waters 3 voxels", result.Findings[0].Message);
        Assert.DoesNotContain("1,1 waters", result.Findings[0].Message);
        Assert.Contains("13,12 waters 3 voxels", result.Findings[1].Message);
    }

    [Fact]
    public void Blocked_needle_away_from_the_unit_is_not_mentioned()
    {
        NeedleTable table = new() { Needles = [new NeedleState { Column = 1, Row = 1, Condition = NeedleCondition.Blocked }] };

        Assert.Empty(DoseBox(Samples.Job(Samples.Box(0.1, 0.1, 0.1), needles: table)).Result.Findings);
    }

    [Fact]
    public void Shifted_layers_take_their_own_voxels_and_leave_out_the_wall()
    {
        ReefUnit unit = Samples.Box(1.2, 0.2, 0.15) with { Place = new PlacementWish { ShiftedLayers = true } };
        (PlacementResult placed, DoseResult result) = DoseBox(Samples.Job(unit));

        Lattice lattice = placed.Lattice!;
        int straight = lattice.Index(0, 2, 1), shifted = lattice.Index(0, 2, 2);
        Assert.True(lattice.IsShifted(2) && !lattice.IsShifted(1));
        Assert.Equal(1.0, result.VoxelFractions[straight]);
        Assert.Equal(1.0, result.VoxelFractions[shifted]);
        // The row below the unit's first reaches half into it when shifted; the last column would touch the wall.
        Assert.Equal(0.5, result.VoxelFractions[lattice.Index(0, 1, 2)]);
        Assert.Equal(0.0, result.VoxelFractions[lattice.Index(23, 2, 2)]);
        Assert.Equal(2760, result.Doses.CentiMillilitres[lattice.Index(23, 2, 1)]);
        Assert.Equal(0, result.Doses.CentiMillilitres[lattice.Index(23, 2, 2)]);
    }

    [Fact]
    public void Mirrored_units_give_mirrored_doses()
    {
        JobDescription job = Samples.Job(Samples.Box(0.4, 0.4, 0.2));
        PlacementResult placed = Placer.Place(job, 4);
        Func<Point3, double> wedge = p => p.X + 0.3 * p.Y - 0.7 * p.Z < 0.7213 ? Samples.InBox(placed.Placement!)(p) : 0;
        DoseResult plain = PlainDoser.Dose(job, placed.Lattice!, Samples.Target(placed.Cells!, wedge));
        DoseResult mirrored = PlainDoser.Dose(job, placed.Lattice!, Samples.Target(placed.Cells!, p => wedge(p with { X = 1.2 - p.X })));

        Lattice lattice = placed.Lattice!;
        Assert.True(plain.Doses.CentiMillilitres.Distinct().Count() > 5);
        for (int k = 0; k < lattice.Layers; k++)
        {
            for (int j = 0; j < lattice.Rows; j++)
            {
                for (int i = 0; i < lattice.Columns; i++)
                {
                    Assert.Equal(
                        plain.Doses.CentiMillilitres[lattice.Index(i, j, k)],
                        mirrored.Doses.CentiMillilitres[lattice.Index(lattice.Columns - 1 - i, j, k)]);
                }
            }
        }
    }

    /// <summary>For any share of solid in any voxel and any state of the needles: no dose beyond needle or pores, none from a blocked needle, steps agree with volumes.</summary>
    [Fact]
    public void Doses_keep_every_limit_for_any_target()
    {
        Gen<(double[] Shares, double[] Gains, int[] States, double Most)> gen = Gen.Select(
            Gen.Double[0.0, 1.0].Array[8 * 8 * 3], Gen.Double[0.9, 1.1].Array[64], Gen.Int[0, 5].Array[64], Gen.Double[10.0, 50.0]);
        for (uint seed = 0; seed < 30; seed++)
        {
            (double[] shares, double[] gains, int[] states, double most) = gen.Generate(new PCG(seed, 11), null, out _);
            Printer small = Samples.SmallPrinter(8, 8, 3);
            NeedleState[] needles = [.. Enumerable.Range(0, 64).Select(n => new NeedleState
            {
                Column = n % 8 + 1, Row = n / 8 + 1, Gain = gains[n], OffsetMillilitres = gains[n] - 1.0,
                Condition = states[n] == 0 ? NeedleCondition.Blocked : states[n] == 1 ? NeedleCondition.Limited : NeedleCondition.Ok,
            })];
            JobDescription job = Samples.Job(
                Samples.Box(0.4, 0.4, 0.1), printer: small with { Needle = small.Needle with { Most = Volume.FromMillilitres(most) } },
                needles: new NeedleTable { Needles = needles });
            PlacementResult placed = Placer.Place(job, 2);
            Lattice lattice = placed.Lattice!;
            TargetField target = Samples.Target(placed.Cells!, p => shares[lattice.Index((int)(p.X / 0.05), (int)(p.Y / 0.05), (int)(p.Z / 0.05))]);

            DoseResult result = PlainDoser.Dose(job, lattice, target);

            for (int index = 0; index < lattice.Count; index++)
            {
                NeedleState needle = needles[index % 64];
                int given = result.Doses.CentiMillilitres[index];
                Assert.True(needle.Condition != NeedleCondition.Blocked || given == 0);
                Assert.True(given == 0 || (given >= 200 && given / 100.0 <= Math.Min(most, result.Limits.PoreMillilitres)));
                Assert.Equal(PumpSteps.Of(job.Printer.Needle, needle).CentiMillilitres(result.Doses.Steps[index]), given);
            }
        }
    }
}
