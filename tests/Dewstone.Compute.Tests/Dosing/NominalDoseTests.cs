using Dewstone.Compute.Dosing;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Tests.Dosing;

public sealed class NominalDoseTests
{
    /// <summary>
    /// Dose balance of a voxel (exact): volume = water/cement x loose density x binder share x voxel volume / liquid density.
    /// At 0.45, 1600 kg/m3, one third cement: a 5 mm voxel takes 0.030000 mL, 20 x 20 x 10 mm take 0.960000 mL.
    /// </summary>
    [Theory]
    [InlineData(0.005, 0.005, 0.030)]
    [InlineData(0.020, 0.010, 0.960)]
    public void Dose_balance_of_a_voxel_is_exact(double pitch, double layer, double millilitres)
    {
        double binder = Samples.Mix(1.0 / 3.0, 1600).BinderKilogramsPerCubicMetre(new Density(1600));

        Assert.Equal(millilitres, NominalDose.VoxelMillilitres(0.45, binder, pitch * pitch * layer, 1000), 1e-9);
    }

    /// <summary>
    /// Porosity = 1 - loose density x (share / grain density summed), water/cement at full pores = porosity x 1000 / (loose density x cement share); exact.
    /// 1600 kg/m3 with a third cement: 0.428172 and 0.802823; 1700 with a quarter: 0.383947 and 0.903405. At 0.45 the first holds 240 kg/m3, saturated to 0.56052.
    /// </summary>
    [Theory]
    [InlineData(1.0 / 3.0, 1600, 0.428172, 0.802823)]
    [InlineData(0.25, 1700, 0.383947, 0.903405)]
    public void Porosity_and_saturation_follow_from_the_densities(double cement, double loose, double porosity, double saturation)
    {
        DryMix mix = Samples.Mix(cement, loose);

        double found = mix.Porosity(mix.LooseDensity);
        double binder = mix.BinderKilogramsPerCubicMetre(mix.LooseDensity);

        Assert.Equal(porosity, found, 1e-6 * porosity);
        Assert.Equal(saturation, found * 1000.0 / binder, 1e-6 * saturation);
        if (loose == 1600)
        {
            Assert.Equal(240.0, 0.45 * binder, 1e-9);
            Assert.Equal(0.56052, 0.45 * binder / (1000.0 * found), 1e-5);
        }
    }

    [Theory]
    [InlineData(0.25, 0.45, 0.43)]
    [InlineData(0.55, 0.80, 0.57)]
    [InlineData(0.40, 0.43, 0.415)]
    public void Nominal_water_cement_keeps_a_margin_inside_the_band(double min, double max, double expected)
    {
        ReefUnit unit = Samples.WrackBlock() with { Require = new Requirements { WaterCement = new WaterCementBand(min, max, 0.95) } };
        JobDescription job = Samples.Job(unit);
        Lattice lattice = Placer.Place(job, 2).Lattice!;

        NominalDose nominal = NominalDose.Choose(job, lattice);

        Assert.Equal(expected, nominal.WaterCement, 12);
        Assert.Equal(expected * 425 * 0.000125 * 1000, nominal.Millilitres, 9);
    }

    [Fact]
    public void Nominal_dose_is_the_closing_dose_with_its_allowance_where_the_band_allows()
    {
        JobDescription job = Samples.Job(Samples.Box(0.2, 0.2, 0.2) with { Require = new Requirements { WaterCement = new WaterCementBand(0.25, 0.80, 0.95) } });
        Lattice lattice = Placer.Place(job, 2).Lattice!;

        NominalDose nominal = NominalDose.Choose(job, lattice);

        Assert.Equal(PocketClosing.Millilitres(job, lattice), nominal.ClosingMillilitres);
        Assert.Equal(1.03 * nominal.ClosingMillilitres, nominal.Millilitres, 9);
    }

    [Fact]
    public void Loose_density_of_the_night_scales_the_dose()
    {
        JobDescription job = Samples.Pinned(Samples.Job()) with { Tonight = new Tonight { LooseDensity = new Density(1734) } };
        job = job with { Unit = job.Unit with { Require = new Requirements { WaterCement = new WaterCementBand(0.50, 0.54, 0.95) } } };
        Lattice lattice = Placer.Place(job, 2).Lattice!;

        Assert.Equal(0.52 * 1734 * 0.25 * 0.125, NominalDose.Choose(job, lattice).Millilitres, 9);
    }

    [Fact]
    public void Pores_are_taken_at_the_densest_likely_packing()
    {
        JobDescription job = Samples.Job();
        Lattice lattice = Placer.Place(job, 2).Lattice!;

        // 1700 x 1.04 = 1768 kg/m3 leaves porosity 1 - 1768 x (0.25/3150 + 0.75/2650) = 0.359305; times 125 mL.
        Assert.Equal(44.913, DoseLimits.Of(job, lattice).PoreMillilitres, 0.001);
        JobDescription unsaid = job with { Mix = job.Mix with { Uncertainty = null } };
        Assert.Equal((1 - 1734 * (0.25 / 3150 + 0.75 / 2650)) * 125, DoseLimits.Of(unsaid, lattice).PoreMillilitres, 9);
    }
}
