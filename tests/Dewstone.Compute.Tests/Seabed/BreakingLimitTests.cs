using Dewstone.Compute.Seabed;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Tests.Seabed;

public sealed class BreakingLimitTests
{
    /// <summary>On a level seabed McCowan's Hb = 0.78 d: 3 m bears 2.34 m.</summary>
    [Fact]
    public void Level_seabed_bears_McCowans_share() => Assert.Equal(2.34, BreakingLimit.ByDepth(8.0, 3.0, 0.0), 1e-12);

    /// <summary>Weggel, Coastal Engineering Manual example II-4-1: T = 10 s, slope 1 to 100: a wave of 2.7 m breaks in 3.2 m; recomputed 2.6774 m in 3.2060 m.</summary>
    [Fact]
    public void Sloping_seabed_equals_the_manuals_example() => Assert.Equal(2.6774, BreakingLimit.ByDepth(10.0, 3.2060, 0.01), 1e-3);

    /// <summary>Miche, T = 8 s in 5 m: 0.142 L tanh(k d) = 4.0041 m.</summary>
    [Fact]
    public void Steepness_limit_equals_Miche() => Assert.Equal(4.0041, BreakingLimit.BySteepness(new AiryWave(1.0, 8.0, 5.0)), 1e-3);

    /// <summary>Goda, A = 0.17, T = 8 s in 5 m: flat 3.5683 m; 1 to 100 3.6702; 1 to 50 3.8235; 1 to 20 4.4147 (formula from memory, digits recomputed).</summary>
    [Theory]
    [InlineData(0.0, 3.5683)]
    [InlineData(0.01, 3.6702)]
    [InlineData(0.02, 3.8235)]
    [InlineData(0.05, 4.4147)]
    public void Goda_limit_equals_the_recomputed_digits(double slope, double expected) => Assert.Equal(expected, BreakingLimit.ByGoda(8.0, 5.0, slope), 1e-4);

    /// <summary>Rayleigh's law: the most probable greatest of 1000 waves is sqrt(ln 1000 / 2) = 1.858 Hs (Longuet-Higgins, 1952; from memory).</summary>
    [Fact]
    public void Greatest_of_a_thousand_waves_is_186_hundredths() => Assert.Equal(1.8585, DesignHeight.GreatestFactor(1000.0), 1e-4);

    [Theory]
    [InlineData(DesignHeightRule.Significant, 1.2)]
    [InlineData(DesignHeightRule.HighestTenth, 1.524)]
    [InlineData(DesignHeightRule.Stated, 3.0)]
    public void Rule_chooses_the_height(DesignHeightRule rule, double expected) => Assert.Equal(expected, DesignHeight.Metres(Wave(rule)), 1e-12);

    /// <summary>Three hours of 7 s waves are 1542.9 waves: sqrt(ln 1542.9 / 2) = 1.91591 times 1.2 m.</summary>
    [Fact]
    public void Greatest_wave_is_that_of_a_storm_of_three_hours() => Assert.Equal(1.2 * 1.91591, DesignHeight.Metres(Wave(DesignHeightRule.Greatest)), 1e-4);

    private static DesignWave Wave(DesignHeightRule rule) =>
        new() { SignificantHeight = new Length(1.2), PeakPeriod = new Duration(7), HeightRule = rule, StatedHeight = new Length(3.0) };
}
