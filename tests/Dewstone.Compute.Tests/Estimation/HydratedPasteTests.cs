using Dewstone.Compute.Estimation;

namespace Dewstone.Compute.Tests.Estimation;

public sealed class HydratedPasteTests
{
    /// <summary>Ultimate hydration 1.031 w/(0.194 + w): Schindler and Folliard, 2005, from memory; 0.50 gives 0.74280, 0.60 gives 0.77909, 0.45 gives 0.72042.</summary>
    [Theory]
    [InlineData(0.30, 0.62611)]
    [InlineData(0.40, 0.69428)]
    [InlineData(0.45, 0.72042)]
    [InlineData(0.50, 0.74280)]
    [InlineData(0.60, 0.77909)]
    public void Ultimate_hydration_follows_the_published_form(double waterCement, double expected) =>
        Assert.Equal(expected, HydratedPaste.UltimateHydration(waterCement), 1e-5);

    [Fact]
    public void Hydration_never_binds_more_water_than_there_is()
    {
        Assert.Equal(0.0, HydratedPaste.UltimateHydration(0.0));
        for (double waterCement = 0.01; waterCement < 8.0; waterCement += 0.01)
        {
            double share = HydratedPaste.UltimateHydration(waterCement);
            Assert.InRange(share, 0.0, 1.0);
            Assert.True(HydratedPaste.BoundWater * share < waterCement);
        }
    }

    /// <summary>
    /// Growth of the solids, 0.166e-3 m3 a kg hydrated, against the volume model of Jensen and Hansen (2001, from memory): a volume of cement becomes
    /// 1.52 volumes of gel solids, i.e. 0.52/3150 = 0.165e-3 m3 a kg.
    /// </summary>
    [Fact]
    public void Growth_of_the_solids_agrees_with_the_paste_volume_model() =>
        Assert.Equal(0.52 / 3150, HydratedPaste.SolidsGrowthCubicMetres(1.0), 0.01 * 0.52 / 3150);
}
