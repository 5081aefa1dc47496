using Dewstone.Compute.Calibration;

namespace Dewstone.Compute.Tests.Calibration;

public sealed class WaterVolumeTests
{
    // Z in mL/g. Table of Z factors of ISO 8655-6 as reprinted in a laboratory pipette's manual; its four decimals leave 5e-5, so 6e-5.
    [Theory]
    [InlineData(15.0, 800.0, 1.0018)]
    [InlineData(15.0, 1013.0, 1.0020)]
    [InlineData(18.0, 800.0, 1.0022)]
    [InlineData(18.0, 907.0, 1.0024)]
    [InlineData(20.0, 800.0, 1.0026)]
    [InlineData(20.0, 853.0, 1.0027)]
    [InlineData(20.0, 907.0, 1.0027)]
    [InlineData(20.0, 960.0, 1.0028)]
    [InlineData(20.0, 1013.0, 1.0029)]
    [InlineData(20.0, 1067.0, 1.0029)]
    [InlineData(21.0, 960.0, 1.0030)]
    [InlineData(22.0, 1067.0, 1.0033)]
    [InlineData(23.0, 853.0, 1.0034)]
    [InlineData(25.0, 1013.0, 1.0040)]
    [InlineData(30.0, 800.0, 1.0052)]
    [InlineData(30.0, 1067.0, 1.0055)]
    public void Z_is_that_of_the_table(double celsius, double hectopascals, double expected) =>
        Assert.Equal(expected, WaterVolume.MillilitresPerGram(celsius, hectopascals), 6e-5);

    // Tanaka et al. 2001, Metrologia 38:301, table 3 (from memory), kg/m3.
    [Theory]
    [InlineData(4.0, 999.97495)]
    [InlineData(10.0, 999.70270)]
    [InlineData(20.0, 998.20675)]
    [InlineData(30.0, 995.64880)]
    public void Density_is_Tanakas(double celsius, double expected) => Assert.Equal(expected, WaterVolume.Density(celsius), 1e-5);

    // Ten weighings about 10 g at Z = 1.00285: mean volume 10.024489 mL, systematic error +0.244886 %, coefficient of variation 0.157825 %
    // (ISO 8655-6: es = 100 (mean - nominal)/nominal, CV = 100 s/mean; worked by hand).
    [Fact]
    public void Weighings_give_systematic_and_random_error()
    {
        double[] grams = [9.98, 10.01, 10.00, 9.97, 10.02, 9.99, 10.00, 10.01, 9.98, 10.00];
        double[] volumes = [.. grams.Select(mass => mass * 1.00285)];
        double mean = volumes.Average();
        double deviation = Math.Sqrt(volumes.Sum(v => (v - mean) * (v - mean)) / 9.0);
        Assert.Equal(1.00285, WaterVolume.MillilitresPerGram(20.0, 1013.25), 5e-6);
        Assert.Equal(10.024489, mean, 1e-6);
        Assert.Equal(0.157825, 100.0 * deviation / mean, 1e-6);
    }
}
