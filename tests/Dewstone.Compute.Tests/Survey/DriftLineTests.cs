using Dewstone.Compute.Survey;

namespace Dewstone.Compute.Tests.Survey;

public sealed class DriftLineTests
{
    // NIST StRD, linear regression, Norris (lower difficulty), n = 36: certified b0 = -0.262323073774029, b1 = 1.00211681802045, s(b1) = 0.429796848199937e-3,
    // residual standard deviation 0.884796396144373.
    private static readonly double[] X =
    [
        0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0, 447.5, 11.6, 556.0, 228.1, 995.8, 887.6, 120.2,
        0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5,
    ];

    private static readonly double[] Y =
    [
        0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9, 10.8, 557.7, 228.3, 998.0, 888.8, 119.6,
        0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2,
    ];

    [Fact]
    public void Fit_has_the_certified_values_of_Norris()
    {
        DriftLine line = DriftLine.Of(X, Y, 0.0)!.Value;
        Assert.Equal(-0.262323073774029, line.Intercept, 1e-10);
        Assert.Equal(1.00211681802045, line.Slope, 1e-13);
        Assert.Equal(0.429796848199937e-3, line.SlopeError, 1e-14);
        Assert.Equal(0.884796396144373, line.ResidualDeviation, 1e-11);
    }

    [Fact]
    public void Values_at_one_place_or_fewer_than_three_have_no_line()
    {
        Assert.Null(DriftLine.Of([1.0, 2.0], [1.0, 2.0], 0.0));
        Assert.Null(DriftLine.Of([1.0, 1.0, 1.0], [1.0, 2.0, 3.0], 0.0));
    }
}
