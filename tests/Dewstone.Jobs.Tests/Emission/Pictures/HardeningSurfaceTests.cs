using Dewstone.Jobs.Emission.Pictures;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Tests.Emission.Pictures;

public sealed class HardeningSurfaceTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Level_has_the_sign_of_hardened(bool power)
    {
        MoistureResult moisture = SampleJob.Ball().Moisture;
        WettingLaw law = power
            ? new PowerLaw { AtSaturation = new Diffusivity(3.2e-6), Exponent = 4 }
            : new ExponentialLaw { AtSaturation = new Diffusivity(1.5e-5), Exponent = 8 };

        float[] level = HardeningSurface.Of(moisture, law, new Parallelism(2)).Level;

        Assert.Contains(level, value => value > 0f);
        Assert.All(Enumerable.Range(0, level.Length), i =>
            Assert.True((level[i] > 0f) == (moisture.Hardened[i] == 1) || Math.Abs(level[i]) < 1e-5f, $"cell {i}: level {level[i]}"));
    }

    // D goes with the fourth power, so the level is (theta/threshold)^3 - 1: contents of the cube roots of 1.25 and 0.75 lie alike on both sides.
    [Fact]
    public void Level_of_the_power_law_with_exponent_4_is_the_cube_of_the_content_ratio()
    {
        MoistureResult moisture = SampleJob.Ball().Moisture;
        float threshold = (float)moisture.ThresholdContent;
        moisture.VolumetricWaterContent[0] = threshold * MathF.Cbrt(1.25f);
        moisture.VolumetricWaterContent[1] = threshold * MathF.Cbrt(0.75f);
        moisture.VolumetricWaterContent[2] = 0f;

        float[] level = HardeningSurface.Of(moisture, new PowerLaw { AtSaturation = new Diffusivity(3.2e-6), Exponent = 4 }, new Parallelism(1)).Level;

        Assert.Equal(0.25f, level[0], 1e-5f);
        Assert.Equal(-0.25f, level[1], 1e-5f);
        Assert.Equal(-1f, level[2], 1e-6f);
    }
}
