using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Tests.Numerics;

public sealed class NormalQuantileTests
{
    /// <summary>0.25 and 0.001: printed with the algorithm, Wichura 1988, Applied Statistics 37:477 (from memory). The rest: tables of the normal distribution.</summary>
    [Theory]
    [InlineData(0.25, -0.6744897501960817)]
    [InlineData(0.001, -3.090232306167814)]
    [InlineData(0.9, 1.2815515655446004)]
    [InlineData(0.975, 1.959963984540054)]
    [InlineData(0.99, 2.3263478740408408)]
    [InlineData(0.995, 2.5758293035489004)]
    [InlineData(1e-8, -5.612001244174789)]
    [InlineData(0.5, 0.0)]
    public void Quantile_is_the_published_one(double fraction, double expected) => Assert.Equal(expected, NormalQuantile.At(fraction), 1e-13);

    // A sum of 4001 rounded terms is off by about sqrt(4001) units of 1.1e-16: 0.7e-14 of the integral.
    private const double Rounding = 1e-14;

    /// <summary>The definition: half plus the integral of exp(-t^2/2)/sqrt(2 pi) from 0 to the quantile is the fraction, over both forms and their joint at 0.925.</summary>
    [Fact]
    public void Density_up_to_the_quantile_integrates_to_the_fraction()
    {
        for (double z = 0.05; z < 5.0; z += 0.05)
        {
            const int Steps = 4000;
            double h = z / Steps, sum = 0.0;
            for (int i = 0; i <= Steps; i++)
            {
                double weight = i is 0 or Steps ? 1.0 : i % 2 == 1 ? 4.0 : 2.0;
                sum += weight * Math.Exp(-0.5 * i * h * i * h);
            }

            double half = sum * h / 3.0 / Math.Sqrt(2.0 * Math.PI);
            double slope = Math.Exp(-0.5 * z * z) / Math.Sqrt(2.0 * Math.PI);
            Assert.Equal(z, NormalQuantile.At(0.5 + half), 1e-12 + Rounding / slope);
            Assert.Equal(-z, NormalQuantile.At(0.5 - half), 1e-12 + Rounding / slope);
        }
    }

    [Fact]
    public void Ends_are_finite_and_opposite()
    {
        Assert.InRange(NormalQuantile.At(1.0), 6.6, 6.7);
        Assert.Equal(-NormalQuantile.At(1.0), NormalQuantile.At(0.0));
    }
}
