using Dewstone.Compute.Calibration;

namespace Dewstone.Compute.Tests.Calibration;

public sealed class GrubbsTestTests
{
    // Two-sided critical values at 5 %, published table of Grubbs' test. The one-sided value of six is 1.8221: mixing them up fails here.
    [Theory]
    [InlineData(3, 1.1543)]
    [InlineData(4, 1.4812)]
    [InlineData(5, 1.7150)]
    [InlineData(6, 1.8871)]
    [InlineData(7, 2.0200)]
    [InlineData(8, 2.1266)]
    [InlineData(10, 2.2900)]
    [InlineData(12, 2.4116)]
    [InlineData(15, 2.5483)]
    [InlineData(20, 2.7082)]
    [InlineData(30, 2.9085)]
    public void Critical_value_is_that_of_the_table(int count, double expected) => Assert.Equal(expected, GrubbsTest.Critical(count, 0.05), 1e-4);

    // NIST/SEMATECH e-Handbook, 1.3.5.17.1: 245.57 is an outlier, G = 2.4687.
    [Fact]
    public void Handbook_outlier_is_found()
    {
        double[] readings = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];
        Assert.Equal(2.468765, GrubbsTest.Farthest(readings).Distance, 1e-6);
        Assert.Equal(7, GrubbsTest.Outlier(readings, 0.05));
    }

    // G = 1.691682 of six, below 1.8871.
    [Fact]
    public void Even_readings_have_no_outlier()
    {
        double[] readings = [10.45, 10.26, 10.49, 10.36, 10.53, 10.77];
        Assert.Equal(1.691682, GrubbsTest.Farthest(readings).Distance, 1e-6);
        Assert.Null(GrubbsTest.Outlier(readings, 0.05));
        Assert.Null(GrubbsTest.Outlier([1.0, 9.0], 0.05));
        Assert.Null(GrubbsTest.Outlier([4.0, 4.0, 4.0], 0.05));
    }
}
