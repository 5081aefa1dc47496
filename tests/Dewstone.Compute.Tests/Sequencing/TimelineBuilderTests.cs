using CsCheck;
using Dewstone.Compute.Dosing;
using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Sequencing;

public sealed class TimelineBuilderTests
{
    private static Lattice LatticeFor(JobDescription job) => Placer.Place(job, 2).Lattice!;

    [Fact]
    public void One_dosed_layer_goes_through_every_action_in_order()
    {
        JobDescription job = Samples.Job(Samples.Box(0.2, 0.2, 0.05));
        Lattice lattice = LatticeFor(job);
        DosePlan doses = Samples.Doses(lattice, (i, j, k) => k == 1 && i == 3 && j == 3 ? 1000 : k == 1 && i == 4 && j == 3 ? 2600 : 0);

        (Timeline timeline, DoseSchedule schedule) = TimelineBuilder.Build(job, lattice, doses);

        // The loose layer is only spread. 26 mL at 4 mL/s are 6.5 s; no flush, since one of six layers is dosed.
        Assert.Equal(
            [
                (MachineAction.Spread, 1, 0, 50_000L), (MachineAction.Spread, 2, 0, 50_000L), (MachineAction.Move, 2, 1, 6_000L),
                (MachineAction.Plunge, 2, 1, 4_000L), (MachineAction.Dose, 2, 1, 6_500L), (MachineAction.Hold, 2, 1, 1_000L),
                (MachineAction.Withdraw, 2, 1, 4_000L),
            ],
            timeline.Steps.Select(s => (s.Action, s.Layer, s.Station, s.Milliseconds)));
        Assert.Equal([1, 2, 3, 4, 5, 6, 7], timeline.Steps.Select(s => s.Number));
        Assert.Equal(121_500, timeline.TotalMilliseconds);
        Assert.Equal(3600, timeline.Steps[4].CentiMillilitres);
        Assert.Equal([50.0, 100.0], schedule.LayerSpreadSeconds);
        Assert.Equal(110.0, schedule.DoseStartSeconds[lattice.Index(3, 3, 1)]);
        Assert.Equal(2.5, schedule.PumpSeconds[lattice.Index(3, 3, 1)]);
        Assert.Equal(6.5, schedule.PumpSeconds[lattice.Index(4, 3, 1)]);
        Assert.Equal(0.0, schedule.PumpSeconds[lattice.Index(0, 0, 1)]);
    }

    [Fact]
    public void Head_is_at_its_first_needle_plunged_to_the_tip_and_clear_of_the_bed_while_moving()
    {
        JobDescription job = Samples.Job(Samples.Box(0.2, 0.2, 0.05));
        Lattice lattice = LatticeFor(job);

        (Timeline timeline, _) = TimelineBuilder.Build(job, lattice, Samples.Doses(lattice, (_, _, k) => k == 1 ? 1000 : 0));

        Assert.Null(timeline.Steps[0].HeadTip);
        Assert.Equal(0.100, timeline.Steps[2].HeadTip!.Value.Z, 12);
        Assert.Equal(0.075, timeline.Steps[4].HeadTip!.Value.Z, 12);
        Assert.Equal(0.025, timeline.Steps[4].HeadTip!.Value.X, 12);
    }

    [Fact]
    public void Spreading_costs_bin_area_times_layer_times_loose_density()
    {
        JobDescription job = Samples.Job(Samples.Box(0.2, 0.2, 0.05));
        Lattice lattice = LatticeFor(job);

        (Timeline timeline, _) = TimelineBuilder.Build(job, lattice, Samples.Doses(lattice, (_, _, _) => 0));

        // 1.2 m x 1.2 m x 0.05 m x 1700 kg/m3 = 122.4 kg a layer.
        Assert.All(timeline.Steps, step => Assert.Equal(122.4, step.MixKilograms, 9));
        Assert.Equal(2, timeline.Steps.Count);
    }

    [Fact]
    public void Flushing_follows_every_sixth_dosed_layer_with_the_water_of_all_sound_needles()
    {
        NeedleTable table = new()
        {
            Needles =
            [
                new NeedleState { Column = 1, Row = 1, Condition = NeedleCondition.Blocked },
                new NeedleState { Column = 2, Row = 1, Flow = FlowRate.FromMillilitresPerSecond(3) },
            ],
        };
        JobDescription job = Samples.Job(Samples.Box(0.2, 0.2, 0.65), needles: table);
        Lattice lattice = LatticeFor(job);

        (Timeline timeline, _) = TimelineBuilder.Build(job, lattice, Samples.Doses(lattice, (i, j, k) => k > 0 && i == 3 && j == 3 ? 1000 : 0));

        MachineStep[] flushes = [.. timeline.Steps.Where(s => s.Action == MachineAction.Flush)];
        Assert.Equal([7, 13], flushes.Select(s => s.Layer));
        // 24 x 24 needles at 4 mL/s, one blocked, one at 3 mL/s: 2299 mL/s for 2 s.
        Assert.All(flushes, flush => Assert.Equal(459_800, flush.CentiMillilitres));
    }

    [Fact]
    public void Flush_water_is_limited_by_the_supply()
    {
        Printer printer = Samples.YardPrinter() with { Supply = new Supply(FlowRate.FromMillilitresPerSecond(1000), new Volume(0.4)) };
        JobDescription job = Samples.Job(Samples.Box(0.2, 0.2, 0.3), printer: printer);
        Lattice lattice = LatticeFor(job);

        (Timeline timeline, _) = TimelineBuilder.Build(job, lattice, Samples.Doses(lattice, (i, j, k) => k > 0 && i == 3 && j == 3 ? 1000 : 0));

        Assert.Equal(200_000, timeline.Steps.Single(s => s.Action == MachineAction.Flush).CentiMillilitres);
    }

    [Fact]
    public void Each_station_with_doses_has_its_own_visit_and_start()
    {
        Printer yard = Samples.YardPrinter();
        Printer printer = yard with { Head = yard.Head with { Columns = 12 } };
        JobDescription job = Samples.Job(Samples.Box(0.2, 0.2, 0.05), printer: printer);
        Lattice lattice = LatticeFor(job);
        // The unit stands over raster columns 10 to 13: two in each station.
        DosePlan doses = Samples.Doses(lattice, (i, j, k) => k == 1 && i is >= 2 and <= 5 && j == 3 ? (i < 4 ? 800 : 1600) : 0);

        (Timeline timeline, DoseSchedule schedule) = TimelineBuilder.Build(job, lattice, doses);

        Assert.Equal([1, 2], timeline.Steps.Where(s => s.Action == MachineAction.Move).Select(s => s.Station));
        Assert.Equal([2_000L, 4_000L], timeline.Steps.Where(s => s.Action == MachineAction.Dose).Select(s => s.Milliseconds));
        Assert.Equal(110.0, schedule.DoseStartSeconds[lattice.Index(3, 3, 1)]);
        // 110 + 2 + hold 1 + withdraw 4 + move 6 + plunge 4 s.
        Assert.Equal(127.0, schedule.DoseStartSeconds[lattice.Index(4, 3, 1)]);
    }

    [Fact]
    public void Dose_step_lasts_until_the_last_pump_has_finished()
    {
        JobDescription job = Samples.Job(Samples.Box(0.2, 0.2, 0.05));
        Lattice lattice = LatticeFor(job);

        (Timeline timeline, _) = TimelineBuilder.Build(job, lattice, Samples.Doses(lattice, (i, j, k) => k == 1 && i == 3 && j == 3 ? 1001 : 0));

        // 10.01 mL / 4 mL/s = 2.5025 s, rounded up to the millisecond.
        Assert.Equal(2_503, timeline.Steps.Single(s => s.Action == MachineAction.Dose).Milliseconds);
    }

    /// <summary>
    /// For any doses, on one or several stations: the sequence's dose water is the tables' water to the last hundredth, steps follow each other
    /// without a gap, and each pump runs within its station's dose step.
    /// </summary>
    [Fact]
    public void Sequence_carries_exactly_the_water_of_the_tables_for_any_doses()
    {
        Gen<(int Columns, int Rows, int[] Doses)> gen = Gen.Select(
            Gen.Int[1, 24], Gen.Int[1, 24], Gen.OneOf(Gen.Const(0), Gen.Int[200, 4400]).Array[8 * 8 * 4]);
        for (uint seed = 0; seed < 40; seed++)
        {
            (int columns, int rows, int[] random) = gen.Generate(new PCG(seed, 7), null, out _);
            Printer yard = Samples.YardPrinter();
            JobDescription job = Samples.Job(
                Samples.Box(0.2, 0.2, 0.15), printer: yard with { Head = yard.Head with { Columns = columns, Rows = rows } });
            Lattice lattice = LatticeFor(job);
            DosePlan doses = Samples.Doses(lattice, (i, j, k) => random[lattice.Index(i, j, k)]);

            (Timeline timeline, DoseSchedule schedule) = TimelineBuilder.Build(job, lattice, doses);

            long sequence = timeline.Steps.Where(s => s.Action == MachineAction.Dose).Sum(s => s.CentiMillilitres);
            Assert.Equal(doses.TotalCentiMillilitres, sequence);
            Assert.Equal(timeline.TotalMilliseconds, timeline.Steps.Sum(s => s.Milliseconds));
            Stations stations = Stations.Over(job.Printer);
            var visits = timeline.Steps.Where(s => s.Action == MachineAction.Dose).ToDictionary(s => (s.Layer, s.Station));
            for (int index = 0; index < lattice.Count; index++)
            {
                if (doses.CentiMillilitres[index] == 0)
                {
                    continue;
                }

                int i = index % lattice.Columns, j = index / lattice.Columns % lattice.Rows, k = index / (lattice.Columns * lattice.Rows);
                MachineStep visit = visits[(k + 1, stations.Seat(lattice, i, j).Station)];
                Assert.Equal(visit.StartMilliseconds / 1000.0, schedule.DoseStartSeconds[index]);
                Assert.True(schedule.PumpSeconds[index] * 1000.0 <= visit.Milliseconds + 1e-6);
            }
        }
    }

    /// <summary>
    /// Common practice, no source: 1.8 t of shape of solid share 0.62 (1.1 m square, 26 layers, bin 1.3 m wide and 1.35 m high, the yard printer's times)
    /// takes 27 to 35 minutes without set-up. Doses are those of water/cement 0.50 in 62 % of the voxels.
    /// </summary>
    [Fact]
    public void Shape_of_about_1800_kg_takes_about_half_an_hour()
    {
        Printer yard = Samples.YardPrinter();
        Printer printer = yard with
        {
            Bin = new Bin(new Length(1.3), new Length(1.3), new Length(1.35)),
            Head = yard.Head with { Columns = 26, Rows = 26 },
        };
        JobDescription job = Samples.Job(Samples.Box(1.1, 1.1, 1.3), printer: printer);
        Lattice lattice = LatticeFor(job);
        // 26.56 mL = 0.50 x 425 kg/m3 x (50 mm)^3; in the unit's 22 x 22 columns every 50 positions in turn hold 31 dosed ones.
        DosePlan doses = Samples.Doses(
            lattice, (i, j, k) => k > 0 && i is >= 2 and < 24 && j is >= 2 and < 24 && (i * 7 + j * 11 + k * 13) % 50 < 31 ? 2656 : 0);

        (Timeline timeline, _) = TimelineBuilder.Build(job, lattice, doses);

        double cubicMetres = doses.CentiMillilitres.Count(d => d > 0) * 0.05 * 0.05 * 0.05;
        double fresh = cubicMetres * 1700 + doses.TotalCentiMillilitres / 1e5;
        Assert.Equal(27, lattice.Layers);
        Assert.InRange(fresh, 1780, 1950);
        Assert.InRange(timeline.TotalMilliseconds / 60_000.0, 27.0, 35.0);
    }
}
