using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Tests.Numerics;

public sealed class SplitMix64Tests
{
    // First outputs for seed 1234567 of the public reference code of SplitMix64 (Steele, Lea, Flood 2014).
    [Theory]
    [InlineData(0, 6457827717110365317UL)]
    [InlineData(1, 3203168211198807973UL)]
    [InlineData(2, 9817491932198370423UL)]
    [InlineData(3, 4593380528125082431UL)]
    [InlineData(4, 16408922859458223821UL)]
    public void Output_by_number_is_that_of_the_reference_code(ulong number, ulong expected) =>
        Assert.Equal(expected, SplitMix64.Output(1234567UL, number));

    [Fact]
    public void Fraction_of_the_extreme_words_is_0_and_just_under_1()
    {
        Assert.Equal(0.0, SplitMix64.Fraction(0UL));
        Assert.Equal(1.0 - 1.0 / (1UL << 53), SplitMix64.Fraction(ulong.MaxValue));
    }

    [Fact]
    public void Draws_of_two_features_with_one_seed_differ()
    {
        SeededDraws first = new(7, 0), second = new(7, 1);

        Assert.NotEqual(first.Word(0), second.Word(0));
        Assert.Equal(SplitMix64.Output(SplitMix64.Output(7, 1), 3), second.Word(3));
    }

    // The mean of n even fractions has a standard deviation of 1/sqrt(12 n); four of them are allowed.
    [Fact]
    public void Draws_taken_together_spread_evenly()
    {
        SeededDraws draws = new(2026, 3);
        const int Count = 20_000;
        double sum = 0.0;
        for (ulong draw = 0; draw < Count; draw++) { sum += draws.Fraction(draw); }

        Assert.InRange(sum / Count, 0.5 - 4.0 / Math.Sqrt(12.0 * Count), 0.5 + 4.0 / Math.Sqrt(12.0 * Count));
    }
}
