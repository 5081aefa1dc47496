using Dewstone.Jobs.Emission.Report;

namespace Dewstone.Jobs.Tests.Emission.Report;

public sealed class ReportFiguresTests
{
    [Theory]
    [InlineData(6.0, "6 s")]
    [InlineData(7.055, "7.1 s")]
    [InlineData(1200.0, "20 min")]
    [InlineData(1417.4, "23 min 37 s")]
    [InlineData(3599.7, "1 h 00 min")]
    [InlineData(7470.0, "2 h 05 min")]
    public void Duration_is_told_as_people_say_it(double seconds, string text) => Assert.Equal(text, ReportFigures.Duration(seconds));

    [Fact]
    public void Figures_carry_units_and_a_true_minus()
    {
        Assert.Equal("1050 kg", ReportFigures.Mass(1049.5));
        Assert.Equal("13.8 L", ReportFigures.Litres(0.013824));
        Assert.Equal("28.11 mL", ReportFigures.Dose(2811));
        Assert.Equal("−4.6 %", ReportFigures.SignedShare(-0.046));
        Assert.Equal("+1.2 %", ReportFigures.SignedShare(0.0118));
        Assert.Equal("−28.8 mm", ReportFigures.Quantity(-28.76, "mm"));
        Assert.Equal("0.898", ReportFigures.Quantity(0.8979, "1"));
    }
}
