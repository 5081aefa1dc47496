using CsCheck;
using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Wetting;

/// <summary>No water is lost, none appears, and no pore is overfilled, whatever the doses.</summary>
public sealed class WaterBalanceTests
{
    // Dose of a voxel = water/cement x binder per volume x volume / liquid density (exact). 1600 kg/m3, a third cement, water/cement 0.45:
    // 0.030000 mL for a voxel of 5 mm, 0.960000 mL for 20 x 20 x 10 mm. In a tight box the solver must give the same ratio back.
    [Theory]
    [InlineData(0.005, 0.005, 0.03)]
    [InlineData(0.020, 0.010, 0.96)]
    public void Dose_of_a_voxel_gives_its_water_cement(double pitch, double layerHeight, double millilitres)
    {
        BedProperties bed = ReferenceMix.Bed() with { BinderKilogramsPerCubicMetre = 1600.0 / 3.0, Porosity = 0.428172 };
        MoistureResult result = new SmallJob(1, 1, 1, 8, pitch, layerHeight).Dose(0, 0, 0, millilitres).Solve(bed);
        Assert.Equal(0.45, Enumerable.Range(0, result.Grid.Count).Average(result.WaterCement), 1e-6);
    }

    // The pores of one voxel of 50.8 mm hold 0.383947 x 131.097 mL = 50.334 mL; of 60 mL 9.666 mL are refused and said.
    [Fact]
    public void Dose_above_the_pores_is_refused_and_said()
    {
        MoistureResult result = new SmallJob(1, 1, 1).Dose(0, 0, 0, 60.0).Solve();
        RefusedDose refused = Assert.Single(result.Refused);
        Assert.Equal(0, refused.Index);
        Assert.Equal(9.666, refused.CubicMetres * 1e6, 0.0005);
        Assert.Equal(50.334, result.FieldCubicMetres * 1e6, 0.0005);
        Assert.Equal(60e-6, result.InjectedCubicMetres + result.RefusedCubicMetres, 1e-12);
    }

    // Random doses, half of them none, some above the pores, straight and shifted layers, both laws, odd sizes: 24 fixed cases.
    [Fact]
    public void Water_in_the_field_is_the_water_injected_and_no_pore_is_overfilled()
    {
        for (uint i = 0; i < 24; i++)
        {
            (SmallJob job, BedProperties bed) = RandomJob.Generate(new PCG(i, 20_260), null, out _);
            MoistureResult result = job.Solve(bed);
            double poured = job.Problem().DosesCubicMetres.Sum();
            Assert.Equal(poured, result.InjectedCubicMetres + result.RefusedCubicMetres, 1e-12 * Math.Max(poured, 1e-6));
            Assert.InRange(Math.Abs(result.FieldCubicMetres - result.InjectedCubicMetres), 0.0, 1e-6 * result.InjectedCubicMetres);
            Assert.All(result.VolumetricWaterContent, c => Assert.InRange(c, 0.0, bed.Porosity * (1.0 + 1e-6)));
            Assert.InRange(result.LargestContent, 0.0, bed.Porosity * (1.0 + 1e-6));
        }
    }

    // Twice the diffusivity in half the time is the same flow (Boltzmann's similarity). With a factor of two, a power of the number system,
    // not a bit may differ.
    [Fact]
    public void Twice_the_diffusivity_in_half_the_time_changes_no_bit()
    {
        for (uint i = 0; i < 8; i++)
        {
            double[] doses = Gen.Double[0.0, 45.0].Array[27].Generate(new PCG(i, 7), null, out _);
            SmallJob Job(double layerSeconds, double pumpSeconds) =>
                new SmallJob(5, 5, 4).DoseBlock(1, 4, 0, 3, (x, y, k) => doses[(k * 3 + y - 1) * 3 + x - 1]).Layered(layerSeconds, pumpSeconds);
            MoistureResult slow = Job(80.0, 8.0).Solve(ReferenceMix.Bed(600.0, 4, 3.2e-6));
            MoistureResult fast = Job(40.0, 4.0).Solve(ReferenceMix.Bed(300.0, 4, 6.4e-6));
            Assert.Equal(slow.VolumetricWaterContent, fast.VolumetricWaterContent);
            Assert.Equal(slow.TimeSteps, fast.TimeSteps);
        }
    }

    // Water that the residual content holds back does not move, and nothing else is held back.
    [Fact]
    public void Residual_content_stays_where_the_water_was()
    {
        BedProperties bed = ReferenceMix.Bed() with { Law = new PowerLaw { AtSaturation = new Diffusivity(3.2e-6), Exponent = 4, Residual = 0.03 } };
        MoistureResult free = new SmallJob(3, 3, 3).Dose(1, 1, 1, 35.0).Solve();
        MoistureResult held = new SmallJob(3, 3, 3).Dose(1, 1, 1, 35.0).Solve(bed);
        Assert.InRange(held.FieldCubicMetres / 35e-6, 1.0 - 1e-6, 1.0 + 1e-6);
        Assert.True(held.VolumetricWaterContent.Count(c => c > 0.001f) < free.VolumetricWaterContent.Count(c => c > 0.001f));
    }

    private static Gen<(SmallJob Job, BedProperties Bed)> RandomJob { get; } =
        from columns in Gen.Int[2, 4]
        from rows in Gen.Int[2, 5]
        from layers in Gen.Int[1, 3]
        from cells in Gen.Int[2, 5]
        from height in Gen.Double[0.02, 0.06]
        from shifted in Gen.Bool
        from exponent in Gen.Int[1, 12]
        from isPower in Gen.Bool
        from doses in Gen.Double[-40.0, 60.0].Array[columns * rows * layers]
        select (Job(columns, rows, layers, 2 * cells, height, shifted, doses), Bed(exponent, isPower));

    private static SmallJob Job(int columns, int rows, int layers, int cells, double height, bool shifted, double[] doses)
    {
        SmallJob job = new(columns, rows, layers, cells, ReferenceMix.Pitch, height, shifted);
        for (int i = 0; i < doses.Length; i++)
        {
            (int x, int y, int k) = (i % columns, i / columns % rows, i / columns / rows);
            bool reachesOver = job.Lattice.IsShifted(k) && (x == columns - 1 || y == rows - 1);
            job.Dose(x, y, k, reachesOver ? 0.0 : Math.Max(0.0, doses[i]));
        }

        return job.Layered();
    }

    private static BedProperties Bed(int exponent, bool isPower) => ReferenceMix.Bed() with
    {
        Law = isPower
            ? new PowerLaw { AtSaturation = new Diffusivity(3.2e-6), Exponent = exponent, Residual = exponent % 3 * 0.01 }
            : new ExponentialLaw { AtSaturation = new Diffusivity(1.5e-5), Exponent = exponent },
    };
}
