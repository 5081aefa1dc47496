using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Model.Tests.Description;

public sealed class DryMixTests
{
    private static DryMix Mix(double cementShare, double looseDensity) => new()
    {
        Name = "test",
        Origin = new MixOrigin(MixOriginKind.Assumed, ""),
        Currency = "EUR",
        Solids =
        [
            new Constituent { Name = "cement", Share = cementShare, GrainDensity = new Density(3150.0), IsBinder = true },
            new Constituent { Name = "sand", Share = 1.0 - cementShare, GrainDensity = new Density(2650.0), RecycledShare = 0.4 },
        ],
        LooseDensity = new Density(looseDensity),
        Liquid = new Liquid { Density = new Density(1000.0) },
        Wetting = new PowerLaw { AtSaturation = new Diffusivity(3.2e-6), Exponent = 4 },
        Hardening = new Hardening { WaterCement = 0.22, Window = new Duration(600.0) },
    };

    // Exact mixture arithmetic: solid fraction s = rho_b (c/rho_c + (1 - c)/rho_s), porosity 1 - s, saturated water/cement =
    // porosity x rho_w / (rho_b c). Worked with rho_c 3150, rho_s 2650, rho_w 1000 kg/m3.
    [Theory]
    [InlineData(1600.0, 1.0 / 3.0, 0.428172, 0.802823)]
    [InlineData(1700.0, 0.25, 0.383947, 0.903405)]
    public void Porosity_and_saturated_water_cement_follow_from_densities_and_shares(double loose, double cement, double porosity, double saturated)
    {
        DryMix mix = Mix(cement, loose);
        Assert.Equal(porosity, mix.Porosity(mix.LooseDensity), 6);
        Assert.Equal(saturated, mix.Porosity(mix.LooseDensity) * 1000.0 / mix.BinderKilogramsPerCubicMetre(mix.LooseDensity), 6);
    }

    [Fact]
    public void Shares_of_binder_and_recycled_material_are_by_mass()
    {
        DryMix mix = Mix(0.25, 1700.0);
        Assert.Equal(0.25, mix.BinderShare, 12);
        Assert.Equal(0.30, mix.RecycledShare, 12);
        Assert.Equal(425.0, mix.BinderKilogramsPerCubicMetre(mix.LooseDensity), 9);
    }
}
