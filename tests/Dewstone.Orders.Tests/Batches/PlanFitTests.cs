using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Orders.Batches;
using Dewstone.Orders.Plans;
using Dewstone.Reading;
using Dewstone.Tests;

namespace Dewstone.Orders.Tests.Batches;

/// <summary>Plans that fit their order, and each way in which one does not: two varied units TA and one TB, two printers, of which the second cannot make TB.</summary>
public sealed class PlanFitTests
{
    private static readonly OrderReading Reading = Read();

    [Theory]
    [InlineData("yard-001 1 TA-001 TA-002; yard-002 1 TB-001")]
    [InlineData("a 2 TA-002; b 2 TA-001; c 1 TB-001")]
    [InlineData("all 1 TB-001 TA-002 TA-001")]
    public void Plan_with_each_unit_once_fits(string bins) => Assert.Null(PlanFit.Check(Reading, Plan(bins)));

    [Theory]
    [InlineData("a 1 TA-001 TA-002; a 1 TB-001", "the bin `a` is empty, stands twice, or has no name for a folder")]
    [InlineData("a 1 TA-001 TA-002; b 1; c 1 TB-001", "the bin `b` is empty, stands twice, or has no name for a folder")]
    [InlineData("x/a 1 TA-001 TA-002 TB-001", "the bin `x/a` is empty, stands twice, or has no name for a folder")]
    [InlineData(".. 1 TA-001 TA-002 TB-001", "the bin `..` is empty, stands twice, or has no name for a folder")]
    [InlineData(".a 1 TA-001 TA-002 TB-001", "the bin `.a` is empty, stands twice, or has no name for a folder")]
    [InlineData(" 1 TA-001 TA-002 TB-001", "the bin `` is empty, stands twice, or has no name for a folder")]
    [InlineData("a 1 TA-001 TA-002; b 1 TB-009", "TB-009 in b is not ordered, or stands twice")]
    [InlineData("a 1 TA-001 TA-002 TA-001; b 1 TB-001", "TA-001 in a is not ordered, or stands twice")]
    [InlineData("a 1 TA-001 TA-002; b 1 TA-002 TB-001", "TA-002 in b is not ordered, or stands twice")]
    [InlineData("a 1 TA-001 ta-002; b 1 TB-001", "ta-002 in a is not ordered, or stands twice")]
    [InlineData("a 2 TA-001 TA-002; b 2 TB-001", "TB-001 in b cannot be made on printer 2 of the order")]
    [InlineData("a 3 TA-001 TA-002; b 1 TB-001", "TA-001 in a cannot be made on printer 3 of the order")]
    [InlineData("a 0 TA-001 TA-002; b 1 TB-001", "TA-001 in a cannot be made on printer 0 of the order")]
    [InlineData("a 1 TA-001; b 1 TB-001", "1 units stand in no bin, TA-002 among them")]
    [InlineData("b 1 TB-001", "2 units stand in no bin, TA-001 among them")]
    public void Plan_that_does_not_fit_is_refused_with_what_is_wrong(string bins, string told)
    {
        Model.Diagnostics.Diagnostic unfit = PlanFit.Check(Reading, Plan(bins))!;
        Assert.Equal(("DW7036", told, "remove plan.json and plan the order again"), (unfit.Code, unfit.Message, unfit.Remedy));
    }

    // The printer is the order's and could make the unit, but the plan says nothing of how the line stands there.
    [Fact]
    public void Unit_needs_a_standing_on_its_printer()
    {
        OrderPlan plan = Plan("a 1 TA-001 TA-002; b 1 TB-001");
        Assert.Equal("TB-001 in b cannot be made on printer 1 of the order", PlanFit.Check(Reading, plan with { Footings = [.. plan.Footings.Take(4)] })!.Message);
    }

    [Fact]
    public void Line_has_one_standing_on_a_printer()
    {
        OrderPlan plan = Plan("a 1 TA-001 TA-002; b 1 TB-001");
        Assert.Equal("line 2 has two standings on printer 1 of the order", PlanFit.Check(Reading, plan with { Footings = [.. plan.Footings, Footing(1, 1)] })!.Message);
    }

    // A unit whose file could not be read on a printer has a reading there, but no job.
    [Fact]
    public void Unit_needs_a_job_on_its_printer()
    {
        OrderReading broken = Reading with { Jobs = [Reading.Jobs[0], [Reading.Jobs[1][0]! with { Job = null }, null]] };
        Assert.Equal("TB-001 in b cannot be made on printer 1 of the order", PlanFit.Check(broken, Plan("a 1 TA-001 TA-002; b 1 TB-001"))!.Message);
    }

    private static OrderReading Read()
    {
        using TinyOrder order = new(3);
        OrderReading read = DescriptionReader.ReadOrderFiles(order.File);
        return read with { Jobs = [[read.Jobs[0][0], read.Jobs[0][0]], [read.Jobs[1][0], null]] };
    }

    // Bins as their name, their printer as the order counts them, and their units. Both lines have a standing on printers 0 to 3.
    private static OrderPlan Plan(string bins) => new()
    {
        Order = "Tiny order",
        OrderHash = Reading.Hash,
        Footings = [.. Enumerable.Range(0, 8).Select(i => Footing(i / 4, i % 4))],
        Bins = [.. bins.Split("; ").Select(bin => bin.Split(' ')).Select(words => new PlannedBin
        {
            Name = words[0],
            Printer = int.Parse(words[1]) - 1,
            ShiftedLayers = false,
            ShiftZ = default,
            Units = [.. words[2..].Select((mark, place) => new PlannedUnit(mark, 0, 4 * place, 0))],
            Start = default,
            PrintEnd = default,
            DigNotBefore = default,
            DigStart = default,
            DigEnd = default,
            Mix = new Mass(64.0),
        })],
    };

    // Printers as the order counts them.
    private static Footing Footing(int line, int printer) => new() { Line = line, Printer = printer - 1, Wish = new PlacementWish(), Columns = 3, Rows = 2, Layers = 3 };
}
