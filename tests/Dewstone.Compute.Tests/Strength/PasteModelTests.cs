using Dewstone.Compute.Strength;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Strength;

/// <summary>Jensen and Hansen, 2001, Cement and Concrete Research 31, 647: the equations of the model, worked by hand for cement of 3150 kg/m3 (from memory).</summary>
public sealed class PasteModelTests
{
    [Theory]
    [InlineData(0.42, 1.0, 0.0, 0.65433, 0.25829, 0.00129, 0.08610)]
    [InlineData(0.40, 0.7, 0.13274, 0.47080, 0.18584, 0.14867, 0.06195)]
    [InlineData(0.50, 0.8, 0.07767, 0.47223, 0.18641, 0.20155, 0.06214)]
    public void Volumes_are_those_of_the_model(double waterCement, double hydrated, double unhydrated, double solids, double gelWater, double capillary, double shrinkage)
    {
        PasteVolumes paste = PasteModel.Of(waterCement, hydrated, 3150.0)!;

        Assert.Equal(unhydrated, paste.UnhydratedCement, 1e-5);
        Assert.Equal(solids, paste.GelSolids, 1e-5);
        Assert.Equal(gelWater, paste.GelWater, 1e-5);
        Assert.Equal(capillary, paste.CapillaryWater, 1e-5);
        Assert.Equal(shrinkage, paste.Shrinkage, 1e-5);
        Assert.Equal(1.0, paste.UnhydratedCement + paste.GelSolids + paste.GelWater + paste.CapillaryWater + paste.Shrinkage, 1e-12);
    }

    [Fact]
    public void Paste_without_enough_water_for_the_hydration_is_refused() => Assert.Null(PasteModel.Of(0.36, 1.0, 3150.0));

    [Theory]
    [InlineData(0.0, 0.5, 3150.0)]
    [InlineData(0.4, 1.1, 3150.0)]
    [InlineData(0.4, double.NaN, 3150.0)]
    [InlineData(0.4, 0.5, 0.0)]
    public void Figures_out_of_range_are_refused(double waterCement, double hydrated, double density) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PasteModel.Of(waterCement, hydrated, density));

    // Sum of the clinker's heats as in Schindler and Folliard, 2005, worked by hand (from memory); 350 kg/m3, 70 % hydrated, 2.40 MJ/(m3 K).
    [Fact]
    public void Heat_of_a_plain_cement_and_its_rise_without_loss()
    {
        Assert.Equal(487.708, HydrationHeat.Joules(0.55, 0.18, 0.10, 0.08, 0.027, 0.01, 0.02), 1e-3);
        Assert.Equal(49.787, HydrationHeat.AdiabaticRise(350.0, 0.7, 487_708.0, 2.40e6), 1e-3);
    }
}
