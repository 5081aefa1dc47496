using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Tests.Numerics;

public sealed class LatinDesignTests
{
    [Theory]
    [InlineData(1, 1ul)]
    [InlineData(2, 1ul)]
    [InlineData(20, 7ul)]
    [InlineData(333, ulong.MaxValue)]
    public void Each_input_draws_from_each_stratum_once(int trials, ulong seed)
    {
        LatinDesign design = new(9, trials, seed);
        for (int input = 0; input < 9; input++)
        {
            Assert.Equal(Enumerable.Range(0, trials), Enumerable.Range(0, trials).Select(trial => (int)(design.Fraction(input, trial) * trials)).Order());
            Assert.All(Enumerable.Range(0, trials), trial => Assert.Equal(design.Stratum(input, trial), (int)(design.Fraction(input, trial) * trials)));
        }
    }

    /// <summary>
    /// Ranks of two independent permutations of n have a correlation of mean 0 and variance 1/(n - 1) (Kendall, Rank Correlation Methods; from memory).
    /// Over the 780 pairs of 40 inputs the mean square is 1/(n - 1) with a relative deviation of about sqrt(2/780).
    /// </summary>
    [Fact]
    public void Inputs_are_shuffled_independently()
    {
        const int Inputs = 40, Trials = 50;
        LatinDesign design = new(Inputs, Trials, 3);
        double squares = 0.0, sum = 0.0;
        for (int a = 0; a < Inputs; a++)
        {
            for (int b = 0; b < a; b++)
            {
                double squared = Enumerable.Range(0, Trials).Sum(trial => Math.Pow(design.Stratum(a, trial) - design.Stratum(b, trial), 2));
                double correlation = 1.0 - 6.0 * squared / (Trials * (Trials * (double)Trials - 1.0));
                (squares, sum) = (squares + correlation * correlation, sum + correlation);
            }
        }

        const double Pairs = Inputs * (Inputs - 1) / 2;
        Assert.InRange(squares / Pairs * (Trials - 1), 1.0 - 4.0 * Math.Sqrt(2.0 / Pairs), 1.0 + 4.0 * Math.Sqrt(2.0 / Pairs));
        Assert.InRange(sum / Pairs, -4.0 / Math.Sqrt(Pairs * (Trials - 1)), 4.0 / Math.Sqrt(Pairs * (Trials - 1)));
    }
}
