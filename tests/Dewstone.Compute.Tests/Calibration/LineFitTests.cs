using Dewstone.Compute.Calibration;

namespace Dewstone.Compute.Tests.Calibration;

public sealed class LineFitTests
{
    private static readonly double[] NorrisX =
    [
        .2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777, 558.2, .4, .6, 775.5, 666.9, 338, 447.5, 11.6, 556, 228.1, 995.8, 887.6, 120.2,
        .3, .3, 556.8, 339.1, 887.2, 999, 779, 11.1, 118.3, 229.2, 669.1, 448.9, .5,
    ];

    private static readonly double[] NorrisY =
    [
        .1, 338.8, 118.1, 888, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, .3, .1, 778.1, 668.8, 339.3, 448.9, 10.8, 557.7, 228.3, 998, 888.8, 119.6,
        .3, .6, 557.6, 339.3, 888, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2, .2,
    ];

    // NIST Statistical Reference Datasets, linear regression, Norris (lower difficulty), certified values; relative 1e-10.
    [Fact]
    public void Norris_has_its_certified_values()
    {
        LineFit fit = LineFit.Of(NorrisX, NorrisY);
        Near(-0.262323073774029, fit.Intercept);
        Near(1.00211681802045, fit.Slope);
        Near(0.232818234301152, fit.InterceptError);
        Near(0.429796848199937e-3, fit.SlopeError);
        Near(0.884796396144373, fit.ResidualDeviation);
        Near(0.999993745883712, fit.RSquared);
        Near(26.6173985294224, fit.ResidualSquares);
    }

    // x = 1..5, y = 2.1 3.9 6.2 7.8 10.1: intercept 0.05, slope 1.99, s 0.188856 (worked by hand); at x = 0 the line is as sure as its intercept.
    [Fact]
    public void Short_line_is_the_worked_example()
    {
        LineFit fit = LineFit.Of([1, 2, 3, 4, 5], [2.1, 3.9, 6.2, 7.8, 10.1]);
        Assert.Equal((0.05, 1.99, 0.188856), (Math.Round(fit.Intercept, 9), Math.Round(fit.Slope, 9), Math.Round(fit.ResidualDeviation, 6)));
        Assert.Equal(fit.InterceptError, fit.ErrorAt(0.0), 1e-12);
    }

    // ASTM C1585: uptake against root time; I = 0.02 + 0.0045 sqrt(t), t in s over 1 min to 6 h, gives back slope and intercept.
    [Fact]
    public void Sorptivity_line_gives_back_its_slope()
    {
        double[] root = [.. new[] { 60.0, 300, 600, 1200, 1800, 3600, 7200, 10800, 14400, 18000, 21600 }.Select(Math.Sqrt)];
        LineFit fit = LineFit.Of(root, [.. root.Select(r => 0.02 + 0.0045 * r)]);
        Assert.Equal(0.0045, fit.Slope, 1e-12);
        Assert.Equal(0.02, fit.Intercept, 1e-12);
    }

    // Student's t at 97.5 %, textbook table.
    [Theory]
    [InlineData(1, 12.7062)]
    [InlineData(2, 4.3027)]
    [InlineData(5, 2.5706)]
    [InlineData(10, 2.2281)]
    [InlineData(34, 2.0322)]
    public void Student_quantile_is_that_of_the_table(int freedom, double expected) => Assert.Equal(expected, StudentQuantile.TwoSided(freedom), 5e-5);

    [Fact]
    public void Points_without_width_are_refused()
    {
        Assert.Throws<ArgumentException>(() => LineFit.Of([2.0, 2.0], [1.0, 3.0]));
        Assert.Throws<ArgumentException>(() => LineFit.Of([2.0], [1.0]));
    }

    private static void Near(double expected, double found) => Assert.InRange(found / expected, 1.0 - 1e-10, 1.0 + 1e-10);
}
