using Dewstone.Compute.Inspection;
using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Tests.Inspection;

public sealed class DeviationSamplesTests
{
    // Magnitudes 1 to 1000 mm of equal area, every other one below 0: the share p lies below 1000 p mm. Mean of 1 to n: (n + 1) / 2; the signed sum of
    // +1 - 2 + 3 - ... of 1000 numbers is -500.
    [Theory]
    [InlineData(0.05, 0.050)]
    [InlineData(0.5, 0.500)]
    [InlineData(0.95, 0.950)]
    [InlineData(1.0, 1.000)]
    public void Evenly_spread_magnitudes_have_their_share_as_percentile(double share, double expected)
    {
        DeviationSamples samples = new(1002);
        for (int i = 0; i < 1000; i++)
        {
            // 619 shares no factor with 1000, so every magnitude comes once.
            int number = i * 619 % 1000 + 1;
            samples.Set(i, (number % 2 == 1 ? 0.001 : -0.001) * number, 0.25, isLeftOut: false);
        }

        samples.Set(1000, 9.0, 0.5, isLeftOut: true);
        samples.Set(1001, 9.0, 0.75, isLeftOut: true);

        Assert.Equal(expected, samples.Percentile(share), 1e-12);
        Assert.Equal(0.5005, samples.Mean(), 1e-12);
        Assert.Equal(-0.0005, samples.SignedMean(), 1e-12);
        Assert.Equal((0.5, 1.25), (samples.LeftOutArea(1001), samples.LeftOutArea(1002)));
    }

    // By the definition: put all in order and add up areas until the share is reached. The greatest weighs little, so that many share a class.
    [Theory]
    [InlineData(1.0)]
    [InlineData(1000.0)]
    public void Percentile_is_that_of_all_samples_in_order(double greatest)
    {
        SeededDraws draws = new(11, 0);
        (double Magnitude, double Area)[] all =
            [(greatest, 1e-3), .. Enumerable.Range(0, 500).Select(i => (draws.Fraction(2 * (ulong)i), 0.1 + draws.Fraction(2 * (ulong)i + 1)))];
        DeviationSamples samples = new(all.Length);
        for (int i = 0; i < all.Length; i++)
        {
            samples.Set(i, i % 3 == 0 ? -all[i].Magnitude : all[i].Magnitude, all[i].Area, isLeftOut: false);
        }

        double total = all.Sum(one => one.Area);
        foreach (double share in (double[])[0.01, 0.25, 0.5, 0.9, 0.95, 0.99])
        {
            double below = 0.0;
            double expected = all.OrderBy(one => one.Magnitude).First(one => (below += one.Area) >= share * total).Magnitude;
            Assert.Equal(expected, samples.Percentile(share));
        }
    }
}
