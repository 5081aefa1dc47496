using Dewstone.Compute.Seabed;

namespace Dewstone.Compute.Tests.Seabed;

public sealed class ScourTests
{
    /// <summary>Soulsby, 1997, equation 77 (confirmed at the Coastal Inlets Research Program's and HEC-RAS documentation).</summary>
    [Theory]
    [InlineData(1, 0.137453)]
    [InlineData(10, 0.033047)]
    [InlineData(100, 0.050036)]
    public void Threshold_equals_equation_77(double grain, double expected) => Assert.Equal(expected, Scour.ThresholdShields(grain), 1e-6);

    /// <summary>Quartz in water of 1027 kg/m3 and 1.36e-6 m2/s: grain mm, D*, critical stress N/m2 (recomputed from the same equation).</summary>
    [Theory]
    [InlineData(0.1, 2.0313, 0.14244)]
    [InlineData(0.2, 4.0627, 0.17627)]
    [InlineData(0.5, 10.157, 0.26158)]
    [InlineData(1.0, 20.313, 0.48059)]
    [InlineData(5.0, 101.57, 3.99852)]
    public void Critical_stress_equals_the_worked_one(double millimetres, double grain, double pascals)
    {
        Assert.Equal(1.0, Scour.DimensionlessGrain(millimetres / 1000, 1027, 1.36e-6) / grain, 2e-4);
        Assert.Equal(1.0, Scour.ThresholdPascals(millimetres / 1000, 1027, 1.36e-6) / pascals, 2e-4);
    }

    /// <summary>
    /// H = 1 m, T = 6 s, h = 8 m, d = 0.2 mm, U = 0.5 m/s, 1027 kg/m3 (Soulsby, 1997; formulas from memory, worked by hand): Uw 0.38645, A 0.36903, tau_w 0.58644, tau_c 0.28144,
    /// tau_m 0.37778, greatest at 0, 45 and 90 deg 0.96422, 0.89440, 0.69759 N/m2.
    /// </summary>
    [Fact]
    public void Waves_and_current_equal_the_worked_ones()
    {
        AiryWave wave = new(1.0, 6.0, 8.0);
        double waves = Scour.WavePascals(wave.SpeedAt(0), wave.ExcursionMetres, 2e-4, 1027), current = Scour.CurrentPascals(0.5, 8.0, 2e-4, 1027);

        Assert.Equal(0.38645, wave.SpeedAt(0), 1e-5);
        Assert.Equal(0.36903, wave.ExcursionMetres, 1e-5);
        Assert.Equal(0.58644, waves, 3e-4);
        Assert.Equal(0.28144, current, 1e-4);
        Assert.Equal(0.37778, Scour.MeanPascals(waves, current), 2e-4);
        Assert.Equal(0.96422, Scour.GreatestPascals(waves, current, 0), 5e-4);
        Assert.Equal(0.89440, Scour.GreatestPascals(waves, current, Math.PI / 4), 5e-4);
        Assert.Equal(0.69759, Scour.GreatestPascals(waves, current, Math.PI / 2), 5e-4);
        Assert.Equal(1.130582584, Scour.MeanPascals(1.0, 1.0), 1e-9);
    }

    /// <summary>Sumer, Fredsoe and Christiansen, 1992 (from memory): KC and S / D.</summary>
    [Theory]
    [InlineData(3, 0.0)]
    [InlineData(6, 0.0)]
    [InlineData(10, 0.14700)]
    [InlineData(20, 0.44584)]
    [InlineData(50, 0.95272)]
    [InlineData(100, 1.22251)]
    public void Pile_scour_equals_the_worked_one(double keuleganCarpenter, double expected) => Assert.Equal(expected, Scour.DepthOverWidth(keuleganCarpenter), 1e-5);
}
