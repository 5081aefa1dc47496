using System.Text;
using System.Xml.Linq;
using Dewstone.Jobs.Emission.Charts;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace Dewstone.Jobs.Tests.Emission.Charts;

public sealed class ChartStyleTests
{
    [Fact]
    public void Chart_is_well_formed_svg_with_its_words_and_the_same_each_time()
    {
        string first = Chart(), again = Chart();

        XElement root = XDocument.Parse(first).Root!;
        Assert.Equal("svg", root.Name.LocalName);
        string[] words = [.. root.Descendants().Where(element => element.Name.LocalName == "text").Select(element => element.Value)];
        Assert.Contains("Weights", words);
        Assert.Contains("mass, kg", words);
        Assert.Equal(first, again);
    }

    [Theory]
    [InlineData(0.0, 255, 255, 255)]
    [InlineData(-1.0, 52, 110, 170)]
    [InlineData(-7.0, 52, 110, 170)]
    [InlineData(1.0, 226, 137, 54)]
    public void Deviation_runs_from_blue_over_white_to_orange(double share, byte red, byte green, byte blue) =>
        Assert.Equal(OxyColor.FromRgb(red, green, blue), ChartStyle.Deviation(share));

    private static string Chart()
    {
        PlotModel sheet = ChartStyle.Sheet("Weights", "invented");
        sheet.Axes.Add(ChartStyle.Axis(AxisPosition.Bottom, "unit"));
        sheet.Axes.Add(ChartStyle.Axis(AxisPosition.Left, "mass, kg", ruled: true));
        LineSeries line = new() { Color = ChartStyle.Measured, Title = "weighed" };
        line.Points.AddRange([new DataPoint(1, 801.5), new DataPoint(2, 803.0), new DataPoint(3, 799.0)]);
        sheet.Series.Add(line);
        return Encoding.UTF8.GetString(ChartStyle.Svg("weights.svg", sheet).Bytes.Span);
    }
}
