using Dewstone.Model.Quantities;

namespace Dewstone.Model.Tests.Quantities;

public sealed class QuantityTests
{
    [Fact]
    public void Edges_convert_exactly_by_powers_of_ten()
    {
        Assert.Equal(0.9, Length.FromMillimetres(900.0).Metres);
        Assert.Equal(35.0, Volume.FromMillilitres(35.0).Millilitres, 12);
        Assert.Equal(4.0, FlowRate.FromMillilitresPerSecond(4.0).MillilitresPerSecond, 12);
        Assert.Equal(293.15, new Temperature(20.0).Kelvin);
        Assert.Equal(Math.PI / 3.0, new Angle(60.0).Radians, 15);
    }

    [Fact]
    public void Comparison_is_by_value()
    {
        Length small = new(1.0);
        Length large = new(2.0);
        Assert.True(small < large && large > small && small <= large && large >= small);
        Assert.False(small > large || small >= large || large < small || large <= small);
        Assert.True(small.CompareTo(large) < 0);
    }

    [Theory]
    [InlineData(2325.600000000001, 2325.6)]
    [InlineData(0.12345678, 0.123457)]
    [InlineData(-987654.321, -987654.0)]
    [InlineData(0.0, 0.0)]
    public void Six_significant_figures_drop_the_last_bits(double value, double expected) => Assert.Equal(expected, SignificantFigures.Six(value));
}
