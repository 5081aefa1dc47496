using Dewstone.Compute.Seabed;

namespace Dewstone.Compute.Tests.Seabed;

public sealed class ArmourStoneTests
{
    /// <summary>
    /// Hudson, kN: (25.5, 10.05 kN/m3, 3 m, KD 4, cot 2) 23.7 as published at reuven.tools, recomputed 23.688; (26, Sr 2.65, 4.5 m, 4, 2) 65.9 as published at beta.arizval.app, 65.928;
    /// (23.5, Sr 2.40, 4.5 m, 8, 2) 48.775.
    /// </summary>
    [Theory]
    [InlineData(25.5, 10.05, 3.0, 4, 23.688)]
    [InlineData(26.0, 26.0 / 2.65, 4.5, 4, 65.928)]
    [InlineData(23.5, 23.5 / 2.40, 4.5, 8, 48.775)]
    public void Hudson_equals_the_published_examples(double stone, double water, double height, double stability, double kilonewtons) =>
        Assert.Equal(kilonewtons, ArmourStone.HudsonNewtons(stone * 1000, water * 1000, height, stability, 2.0) / 1000, 2e-3);

    /// <summary>Isbash, V = 2 m/s, Delta = 1625 / 1025, C = 0.86: 0.17387 m (formula from memory).</summary>
    [Fact]
    public void Isbash_equals_the_worked_one() => Assert.Equal(0.17387, ArmourStone.IsbashMetres(2.0, 1625.0 / 1025.0), 1e-5);
}
