using System.Text;
using System.Xml.Linq;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Orders.SitePlans;

namespace Dewstone.Orders.Tests.SitePlans;

public sealed class SeaListTests
{
    private static readonly Transport Barge = new(new Mass(1200.0), 2, 1);

    [Fact]
    public void Deployment_list_holds_each_unit_with_place_mass_and_trip()
    {
        SeaUnit[] units = [.. SeaSamples.Units(3).Select(unit => unit with { Site = SeaSamples.Site(6.0) })];
        string text = Encoding.UTF8.GetString(DeploymentTable.Emit(SiteLayout.Arrange(SeaSamples.Plan(heading: 0.0, rows: 1), units), BargeLoading.Load(Barge, units)).Bytes.Span);
        string[] lines = text.Split('\n');

        Assert.Equal("mark,unit,row,place,latitude_deg,longitude_deg,east_m,north_m,heading_deg,lift_kg,submerged_kg,lifting,water_over_m,trip,deck_place", lines[0]);
        Assert.Equal("WB-002,Wrack block,1,2,41.50000000,-30.20000000,0.00,0.00,0,502,251,\"2 straps, slings at 60 deg\",4.80,1,2", lines[2]);
        Assert.Equal(3 + 2, lines.Length);
    }

    [Fact]
    public void Load_list_goes_trip_by_trip_heaviest_first()
    {
        SeaUnit[] units = SeaSamples.Units(3);
        string text = Encoding.UTF8.GetString(LoadTable.Emit(BargeLoading.Load(Barge, units), SiteLayout.Arrange(SeaSamples.Plan(rows: 1), units)).Bytes.Span);

        Assert.Equal(
            """
            trip,deck_place,level,mark,unit,lift_kg,submerged_kg,lifting,heading_deg,row,place
            1,1,1,WB-003,Wrack block,503,251.5,"2 straps, slings at 60 deg",40,1,3
            1,2,1,WB-002,Wrack block,502,251,"2 straps, slings at 60 deg",40,1,2
            2,1,1,WB-001,Wrack block,501,250.5,"2 straps, slings at 60 deg",40,1,1

            """.ReplaceLineEndings("\n"),
            text);
    }

    [Fact]
    public void Drawing_names_every_unit_within_its_sheet_and_keeps_marks_apart()
    {
        SitePlan plan = SeaSamples.Plan();
        SeaUnit[] units = [.. SeaSamples.Units(98), SeaSamples.Unit("TS-1000", x: 1.2, y: 0.4), SeaSamples.Unit("TS-1001", x: 1.2, y: 0.4)];
        XElement svg = XElement.Parse(Encoding.UTF8.GetString(SitePlanDrawing.Emit("Spring <order>", plan, SiteLayout.Arrange(plan, units)).Bytes.Span));
        double width = (double)svg.Attribute("width")!, height = (double)svg.Attribute("height")!;
        XElement[] marks = [.. svg.Elements().Where(element => (string?)element.Attribute("class") == "mark")];

        Assert.Equal(units.Select(unit => unit.Mark), marks.Select(mark => mark.Value));
        Assert.All(marks, mark =>
        {
            Assert.InRange((double)mark.Attribute("x")!, 20.0, width - 20.0);
            Assert.InRange((double)mark.Attribute("y")!, 20.0, height - 30.0);
        });
        for (int i = 1; i < marks.Length; i++)
        {
            double apart = Math.Abs((double)marks[i].Attribute("x")! - (double)marks[i - 1].Attribute("x")!);
            Assert.True(marks[i].Attribute("y")!.Value != marks[i - 1].Attribute("y")!.Value || apart >= 6.0 * marks[i].Value.Length, marks[i].Value);
        }
    }
}
