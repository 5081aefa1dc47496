using CsCheck;
using Dewstone.Compute.Dosing;
using Dewstone.Compute.Estimation;
using Dewstone.Compute.Numerics;
using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Estimation;

public sealed class EstimatorTests
{
    private static SolidSummary Solid(double hardened, double waterCement, double binder = 425) => new()
    {
        TargetCubicMetres = hardened,
        HardenedCubicMetres = hardened,
        ShapeMatch = 1.0,
        WaterInHardenedCubicMetres = hardened * waterCement * binder / 1000.0,
        MeanWaterCement = waterCement,
        LargestWaterCement = waterCement,
    };

    private static (Estimate Estimate, Timeline Timeline, DosePlan Doses) Run(JobDescription job, SolidSummary solid)
    {
        Lattice lattice = Placer.Place(job, 2).Lattice!;
        DosePlan doses = Samples.Doses(lattice, (i, j, k) => k >= lattice.UnderLayers && i is >= 2 and < 6 && j is >= 2 and < 6 ? 2000 + 10 * k : 0);
        (Timeline timeline, _) = TimelineBuilder.Build(job, lattice, doses);
        return (Estimator.Estimate(job, lattice, solid, doses, timeline), timeline, doses);
    }

    /// <summary>Common practice, no source: a 914 mm cube of solid share 0.62 at mean water/cement 0.50 weighs 907 +-20 kg fresh.</summary>
    [Fact]
    public void Fresh_mass_of_a_914_mm_cube_is_what_the_yard_knows()
    {
        JobDescription job = Samples.Job(Samples.Box(0.914, 0.914, 0.914));

        Estimate estimate = Run(job, Solid(0.62 * 0.914 * 0.914 * 0.914, 0.50)).Estimate;

        Assert.Equal(907.0, estimate.FreshKilograms, 20.0);
        Assert.Equal(estimate.FreshKilograms, estimate.LiftKilograms);
        Assert.Equal(0.38, estimate.SavingAgainstFilledBox, 1e-9);
    }

    /// <summary>
    /// 0.4 m3 hardened of 20 layers in a 1.2 x 1.2 m bin: spread 20 x 122.4 = 2448 kg, hardened 680, loose 1768, of which 15 stay in the bin; of 1753
    /// kg 92 % = 1612.76 can be spread again, 155.24 are lost.
    /// </summary>
    [Fact]
    public void Loose_mix_loses_the_bins_part_first_and_then_its_share()
    {
        Estimate estimate = Run(Samples.Job(Samples.Box(0.2, 0.2, 0.95)), Solid(0.4, 0.5)).Estimate;

        Assert.Equal(2448.0, estimate.SpreadKilograms, 1e-9);
        Assert.Equal(680.0, estimate.HardenedDryKilograms, 1e-9);
        Assert.Equal(1612.76, estimate.ReusableKilograms, 1e-9);
        Assert.Equal(155.24, estimate.LostKilograms, 1e-9);
        Assert.Equal(170.0, estimate.BinderKilograms, 1e-9);
        Assert.Equal(0.30, estimate.RecycledShare, 1e-12);
    }

    /// <summary>Mass closure (exact): spread = hardened + reusable + lost, for any bin, handling and solid, also when all loose mix is lost.</summary>
    [Fact]
    public void Spread_mass_is_hardened_reusable_and_lost_for_any_handling()
    {
        Gen<(double Lost, double Share, double Solid)> gen = Gen.Select(Gen.Double[0, 3000], Gen.Double[0, 1], Gen.Double[0, 0.06]);
        for (uint seed = 0; seed < 200; seed++)
        {
            (double lost, double share, double solid) = gen.Generate(new PCG(seed, 5), null, out _);
            Printer printer = Samples.YardPrinter() with { LooseMix = new LooseMixHandling(new Mass(lost), share) };

            Estimate e = Run(Samples.Job(Samples.Box(0.2, 0.2, 0.2), printer: printer), Solid(solid, 0.5)).Estimate;

            Assert.Equal(e.SpreadKilograms, e.HardenedDryKilograms + e.ReusableKilograms + e.LostKilograms, 1e-9);
            Assert.True(e.ReusableKilograms >= 0 && e.LostKilograms >= 0);
        }
    }

    /// <summary>
    /// 1 m3 hardened at 0.50: hydrated 425 x 0.742795 = 315.69 kg cement, bound water 72.61 kg, dry 1772.61 kg. Grains fill 0.616053 m3, hydrates add
    /// 315.69 x 0.166e-3 = 0.052404, so pores are 0.331543 m3; with 1025 kg/m3 saturated 2112.44 kg and submerged 1087.44 kg. Powers, Jensen and Hansen,
    /// Schindler and Folliard as named in the code, from memory.
    /// </summary>
    [Fact]
    public void Dry_saturated_and_submerged_mass_follow_by_hand()
    {
        Estimate estimate = Run(Samples.Job(Samples.Box(0.2, 0.2, 0.2)), Solid(1.0, 0.5)).Estimate;

        Assert.Equal(1912.5, estimate.FreshKilograms, 1e-9);
        Assert.Equal(1772.61, estimate.DryKilograms, 0.01);
        Assert.Equal(2112.44, estimate.SaturatedKilograms, 0.02);
        Assert.Equal(1087.44, estimate.SubmergedKilograms, 0.02);
        Assert.True(estimate.DryKilograms < estimate.FreshKilograms && estimate.FreshKilograms < estimate.SaturatedKilograms);
    }

    [Fact]
    public void Sea_water_of_the_site_bears_the_unit()
    {
        JobDescription job = Samples.Job(Samples.Box(0.2, 0.2, 0.2)) with { Site = Samples.WracklineShoal() };

        Estimate estimate = Run(job, Solid(1.0, 0.5)).Estimate;

        double density = SeaWater.KilogramsPerCubicMetre(30, 12);
        Assert.InRange(density, 1022.0, 1024.0);
        Assert.Equal(estimate.SaturatedKilograms - density, estimate.SubmergedKilograms, 1e-9);
    }

    [Fact]
    public void Time_by_action_is_the_sequences_to_the_millisecond()
    {
        (Estimate estimate, Timeline timeline, _) = Run(Samples.Job(Samples.Box(0.2, 0.2, 0.6)), Solid(0.02, 0.5));

        Assert.Equal(["spread", "move", "plunge", "dose", "hold", "withdraw", "flush"], estimate.SecondsByAction.Select(a => a.Name));
        Assert.Equal(timeline.TotalMilliseconds, (long)Math.Round(estimate.SecondsByAction.Sum(a => a.Amount) * 1000));
        Assert.Equal(timeline.TotalMilliseconds / 1000.0, estimate.PrintSeconds);
        Assert.Equal(650.0, estimate.SecondsByAction[0].Amount);
        Assert.Equal(4.0, estimate.SecondsByAction[6].Amount);
        Assert.Equal(1200.0, estimate.SetupSeconds);
    }

    [Fact]
    public void Water_by_layer_and_flush_are_what_the_sequence_draws()
    {
        (Estimate estimate, Timeline timeline, DosePlan doses) = Run(Samples.Job(Samples.Box(0.2, 0.2, 0.6)), Solid(0.02, 0.5));

        // Layer k gives 16 needles x (20 + 0.1 k) mL.
        Assert.Equal([.. Enumerable.Range(0, 13).Select(k => k == 0 ? 0.0 : 16 * (20 + 0.1 * k) / 1e6)], estimate.WaterByLayerCubicMetres, (a, b) => Math.Abs(a - b) < 1e-15);
        Assert.Equal(doses.TotalCentiMillilitres / 1e8, estimate.WaterCubicMetres);
        Assert.Equal(estimate.WaterCubicMetres, estimate.WaterByLayerCubicMetres.Sum(), 1e-15);
        // Two flushes of 2 s at 576 x 4 mL/s.
        Assert.Equal(2 * 2 * 576 * 4 / 1e6, estimate.FlushCubicMetres, 1e-15);
        Assert.Equal(
            timeline.Steps.Sum(s => s.CentiMillilitres) / 1e8, estimate.WaterCubicMetres + estimate.FlushCubicMetres, 1e-15);
    }

    /// <summary>By hand: a kilogram of mix carries 0.25 x 0.86 + 0.75 x 0.005 = 0.21875 kg and costs 0.25 x 0.16 + 0.75 x 0.03 = 0.0625; liquid 0.003 a litre, 2 g thickener a litre.</summary>
    [Fact]
    public void Carbon_cost_and_additives_are_of_what_is_used_up()
    {
        Estimate estimate = Run(Samples.Job(Samples.Box(0.2, 0.2, 0.6)), Solid(0.02, 0.5)).Estimate;

        double usedUp = estimate.HardenedDryKilograms + estimate.LostKilograms;
        double litres = (estimate.WaterCubicMetres + estimate.FlushCubicMetres) * 1000;
        Assert.Equal(0.21875 * usedUp, estimate.CarbonKilograms, 1e-9);
        Assert.Equal(0.0625 * usedUp + 0.003 * litres, estimate.Cost, 1e-9);
        Assert.Equal("EUR", estimate.Currency);
        NamedAmount thickener = Assert.Single(estimate.AdditiveKilograms);
        Assert.Equal(("thickener", 0.002 * litres), (thickener.Name, thickener.Amount));
    }

    [Fact]
    public void Nothing_hardened_weighs_nothing()
    {
        Estimate estimate = Run(Samples.Job(Samples.Box(0.2, 0.2, 0.2)), Solid(0.0, 0.0)).Estimate;

        Assert.Equal((0.0, 0.0, 0.0, 0.0), (estimate.FreshKilograms, estimate.DryKilograms, estimate.SaturatedKilograms, estimate.SubmergedKilograms));
        Assert.Equal(1.0, estimate.SavingAgainstFilledBox);
    }
}
