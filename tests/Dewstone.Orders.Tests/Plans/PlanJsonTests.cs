using System.Text;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Orders.Plans;

namespace Dewstone.Orders.Tests.Plans;

public sealed class PlanJsonTests
{
    private static readonly OrderPlan Plan = new()
    {
        Order = "Two \"kinds\"",
        OrderHash = "ab12",
        Footings =
        [
            new Footing
            {
                Line = 0,
                Printer = 1,
                Wish = new PlacementWish { QuarterTurns = 3, Shift = new Point3(0.0125, -0.025, 0.1), ShiftedLayers = true },
                Columns = 9,
                Rows = 8,
                Layers = 7,
            },
        ],
        Bins =
        [
            new PlannedBin
            {
                Name = "yard-001",
                Printer = 1,
                ShiftedLayers = true,
                ShiftZ = new Length(0.0125),
                Start = new DateTime(2027, 3, 1, 18, 0, 0),
                PrintEnd = new DateTime(2027, 3, 1, 19, 1, 0),
                DigNotBefore = new DateTime(2027, 3, 3, 7, 1, 0),
                DigStart = new DateTime(2027, 3, 3, 8, 0, 0),
                DigEnd = new DateTime(2027, 3, 3, 8, 45, 0),
                Mix = new Mass(2448.25),
                Units = [new PlannedUnit("WB-001", 0, 3, 0), new PlannedUnit("TS-001", 3, 0, 11)],
            },
        ],
    };

    [Fact]
    public void A_plan_is_read_back_as_it_was_written()
    {
        byte[] bytes = PlanJson.Write(Plan);

        (OrderPlan? read, _) = PlanJson.Read(bytes, "plan.json", "ab12");

        Assert.NotNull(read);
        Assert.Equal(bytes, PlanJson.Write(read));
        Assert.Equal(Plan.Footings[0], read.Footings[0]);
        Assert.Equal(Plan.Bins[0].Units, read.Bins[0].Units);
        Assert.Equal(Plan.Bins[0] with { Units = [] }, read.Bins[0] with { Units = [] });
        Assert.Contains("\"column\": 4,", Encoding.UTF8.GetString(bytes), StringComparison.Ordinal);
    }

    [Fact]
    public void The_plan_of_another_order_is_refused() =>
        Assert.Equal("DW7011", PlanJson.Read(PlanJson.Write(Plan), "plan.json", "ff").Finding?.Code);

    [Theory]
    [InlineData("")]
    [InlineData("{}")]
    [InlineData("[1]")]
    [InlineData("{\"format\": \"dewstone-plan\", \"version\": 2}")]
    [InlineData("{\"format\": \"dewstone-plan\", \"version\": 1, \"order\": 3}")]
    public void What_is_no_plan_is_a_finding(string text) =>
        Assert.Equal("DW7010", PlanJson.Read(Encoding.UTF8.GetBytes(text), "plan.json", null).Finding?.Code);

    [Fact]
    public void A_plan_cut_anywhere_is_a_finding()
    {
        byte[] bytes = PlanJson.Write(Plan);
        for (int length = 0; length < bytes.Length - 2; length += 37)
        {
            Assert.Equal("DW7010", PlanJson.Read(bytes.AsMemory(0, length), "plan.json", null).Finding?.Code);
        }
    }
}
