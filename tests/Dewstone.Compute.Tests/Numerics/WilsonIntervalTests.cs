using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Tests.Numerics;

public sealed class WilsonIntervalTests
{
    /// <summary>
    /// 32 of 32 and 0 of 32: R's prop.test(correct = FALSE), printed in the public snapshots of an R package's tests as 0.8928208 and 0.1071792.
    /// 12 of 150: a published worked example, 0.046 to 0.135. The rest: Newcombe 1998, Statistics in Medicine 17:857, table I, method 3 (from memory).
    /// </summary>
    [Theory]
    [InlineData(32, 32, 0.8928208, 1.0, 7)]
    [InlineData(0, 32, 0.0, 0.1071792, 7)]
    [InlineData(12, 150, 0.046, 0.135, 3)]
    [InlineData(81, 263, 0.2553, 0.3662, 4)]
    [InlineData(15, 148, 0.0624, 0.1605, 4)]
    [InlineData(0, 20, 0.0, 0.1611, 4)]
    [InlineData(1, 29, 0.0061, 0.1718, 4)]
    public void Interval_is_the_published_one(int count, int trials, double low, double high, int places)
    {
        WilsonInterval interval = WilsonInterval.Of(count, trials);

        Assert.Equal(low, interval.Low, places);
        Assert.Equal(high, interval.High, places);
    }

    /// <summary>Wilson 1927: at its ends the count lies 1.959964 standard deviations away, |count/n - p| = z sqrt(p (1 - p)/n).</summary>
    [Theory]
    [InlineData(1, 7)]
    [InlineData(18, 20)]
    [InlineData(4990, 10000)]
    public void Ends_lie_z_deviations_from_the_count(int count, int trials)
    {
        WilsonInterval interval = WilsonInterval.Of(count, trials);
        foreach (double p in new[] { interval.Low, interval.High })
        {
            Assert.Equal(1.959964, Math.Abs((double)count / trials - p) / Math.Sqrt(p * (1.0 - p) / trials), 1e-6);
        }
    }
}
