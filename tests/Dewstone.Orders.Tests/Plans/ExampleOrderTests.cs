using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Orders.Plans;
using Dewstone.Reading;

namespace Dewstone.Orders.Tests.Plans;

public sealed class ExampleOrderTests
{
    [Fact]
    public void Example_order_of_a_hundred_units_is_planned_in_time_with_four_steps_a_bin()
    {
        DirectoryInfo folder = new(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "build.sh")))
        {
            folder = folder.Parent!;
        }

        OrderReading reading = DescriptionReader.ReadOrderFiles(Path.Combine(folder.FullName, "examples", "wrackline-bay", "spring.order.yaml"));
        PlanningResult result = OrderPlanner.Plan(reading, new Parallelism(2), null, CancellationToken.None, effort: 0.0);

        Assert.DoesNotContain(result.Findings, finding => finding.Severity == Severity.Error);
        PlanRules.AssertHeld(reading, result);
        Assert.Equal(100, result.Figures!.Units);
        Assert.Equal(5, result.Plan!.Bins.Count(bin => bin.Units.Count(unit => unit.Mark.StartsWith("OS", StringComparison.Ordinal)) >= 4));
        Assert.Equal(80, result.Plan.Bins.Count(bin => bin.Units is [{ Mark: ['W', 'B', ..] }]));
    }
}
