using Dewstone.Model.Description;

namespace Dewstone.Model.Tests.Description;

public sealed class MixCorrelationTests
{
    // The factor times its transpose is the matrix of correlations (Cholesky).
    [Theory]
    [InlineData(0.4, -0.9, -0.2)]
    [InlineData(0.0, 0.0, 0.0)]
    [InlineData(-1.0, 0.5, -0.5)]
    [InlineData(0.6, 0.8, 0.0)]
    public void Factor_gives_back_the_correlations(double dt, double dr, double tr)
    {
        (double td, double tt, double rd, double rt, double rr) = new MixCorrelation(dt, dr, tr).Factor()!.Value;
        Assert.Equal(dt, td, 1e-12);
        Assert.Equal(1.0, td * td + tt * tt, 1e-12);
        Assert.Equal(dr, rd, 1e-12);
        Assert.Equal(tr, td * rd + tt * rt, 1e-12);
        Assert.Equal(1.0, rd * rd + rt * rt + rr * rr, 1e-12);
    }

    [Theory]
    [InlineData(0.9, 0.9, -0.9)]
    [InlineData(1.0, 0.5, -0.5)]
    [InlineData(1.5, 0.0, 0.0)]
    public void Correlations_that_cannot_be_have_no_factor(double dt, double dr, double tr) => Assert.Null(new MixCorrelation(dt, dr, tr).Factor());
}
