using System.Xml.Linq;

namespace Dewstone.Jobs.Tests.Emission.Report;

public sealed class InspectionSectionTests
{
    [Fact]
    public void Openings_stand_drawn_predicted_and_asked_for()
    {
        XElement part = SamplePage.Of(Samples.Job() with { Inspection = SampleInspection.Report }).Part("inspection");
        string[] rows = [.. part.Descendants("tbody").Elements("tr").Select(row => string.Join('|', row.Elements().Select(cell => cell.Value)))];

        Assert.Contains("east-west|300 mm|271.7 mm|200 mm|x 450, y 100, z 270 mm", rows);
        Assert.Contains("niches, hollow 3|80 mm|closed|–|–", rows);
        Assert.Contains("mean distance, outward above 0|−1.2 mm", rows);
        Assert.Contains("least neck|48 mm", rows);
        Assert.Contains("foot|0.4 %|0.30 L|x 100, y 200, z 300 mm", rows);
        Assert.Contains("outside the band, of the outermost 10 mm|8.0 %", rows);
        Assert.Contains("largest region outside the band|0.40 L at x 100, y 100, z 100 mm", rows);
        Assert.Contains("basin|36 mm|50 mm|x 200, y 200, z 300 mm", rows);
        Assert.Equal(["12.5", "87.5"], part.Descendants("text").Where(text => (string?)text.Attribute("class") == "small" && text.Value.Length > 0).Select(text => text.Value));
        Assert.Contains("1.25 kg", part.Value);
        Assert.Contains("hangs together", part.Value);
    }

    [Fact]
    public void Job_that_was_not_inspected_says_so() =>
        Assert.Contains("not inspected", SamplePage.Of(Samples.Job() with { Inspection = null }).TextOf("inspection"));
}
