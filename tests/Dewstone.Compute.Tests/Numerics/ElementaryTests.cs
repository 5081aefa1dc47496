using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Tests.Numerics;

public sealed class ElementaryTests
{
    // Against the library's exponential (itself within 1 unit in the last place): at most 2 apart over the whole range.
    [Fact]
    public void Exp_is_the_librarys_within_two_units_in_the_last_place()
    {
        long worst = 0;
        for (int i = 0; i <= 200_000; i++)
        {
            double x = -700.0 + 1400.0 * i / 200_000 + i * 1e-9;
            if (x <= 700.0)
            {
                worst = Math.Max(worst, Math.Abs(BitConverter.DoubleToInt64Bits(Elementary.Exp(x)) - BitConverter.DoubleToInt64Bits(Math.Exp(x))));
            }
        }

        Assert.InRange(worst, 0, 2);
    }

    [Fact]
    public void Exp_of_nothing_is_one_exactly() => Assert.Equal(1.0, Elementary.Exp(0.0));

    [Theory]
    [InlineData(701.0)]
    [InlineData(-701.0)]
    [InlineData(double.NaN)]
    public void Exp_out_of_range_is_refused(double x) => Assert.Throws<ArgumentOutOfRangeException>(() => Elementary.Exp(x));

    // Against the library's logarithm: relative error, from the smallest normal number up and close about 1.
    [Fact]
    public void Log_is_the_librarys_to_a_relative_error_below_1e15()
    {
        double worst = 0.0;
        for (int i = 0; i < 100_000; i++)
        {
            double wide = Math.Exp(-708.0 + 1416.0 * i / 100_000), near = 1.0 + (i - 50_000) * 1e-6;
            worst = wide == 1.0 ? worst : Math.Max(worst, Math.Abs(Elementary.Log(wide) / Math.Log(wide) - 1.0));
            worst = near == 1.0 ? worst : Math.Max(worst, Math.Abs(Elementary.Log(near) / Math.Log(near) - 1.0));
        }

        Assert.InRange(worst, 0.0, 1e-15);
        Assert.Equal(0.0, Elementary.Log(1.0));
    }

    [Theory]
    [InlineData(0.0)]
    [InlineData(-1.0)]
    [InlineData(1e-310)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NaN)]
    public void Log_out_of_range_is_refused(double x) => Assert.Throws<ArgumentOutOfRangeException>(() => Elementary.Log(x));

    [Theory]
    [InlineData(3.0, 0, 1.0)]
    [InlineData(3.0, 1, 3.0)]
    [InlineData(3.0, 13, 1_594_323.0)]
    [InlineData(0.0, 4, 0.0)]
    public void WholePower_is_repeated_multiplication(double x, int exponent, double expected) =>
        Assert.Equal(expected, Elementary.WholePower(x, exponent));

    // In single precision this sum stalls at 2^24.
    [Fact]
    public void Sum_of_many_cells_loses_nothing()
    {
        float[] ones = new float[20_000_003];
        Array.Fill(ones, 1f);
        Assert.Equal(20_000_003.0, FixedOrderSum.Of(ones));
    }
}
