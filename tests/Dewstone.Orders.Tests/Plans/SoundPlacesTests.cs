using Dewstone.Model.Diagnostics;
using Dewstone.Orders.Plans;
using Dewstone.Reading;

namespace Dewstone.Orders.Tests.Plans;

public sealed class SoundPlacesTests : IDisposable
{
    private readonly PlanYard yard = new();

    public void Dispose() => yard.Dispose();

    [Fact]
    public void Units_step_aside_from_a_blocked_needle_and_keep_every_rule()
    {
        string order = PlanYard.With("printers: [small.printer.yaml, other.printer.yaml]", "printers: [small.printer.yaml]", PlanYard.With("quantity: 20", "quantity: 2", PlanYard.With("quantity: 11", "quantity: 1")));
        (_, PlanningResult sound) = yard.Plan(order);
        (int column, int row) = Middle(Assert.Single(sound.Plan!.Bins).Units[0], sound.Plan);

        // The head has 14 by 6 needles and works two stations, one behind the other.
        yard.Write("needles.csv", string.Concat(Enumerable.Range(0, 14 * 6).Select(needle =>
            $"{needle % 14 + 1},{needle / 14 + 1},A,{needle + 1},{(needle == row % 6 * 14 + column ? "blocked" : "ok")},1,0,4,2\n").Prepend("column,row,board,channel,state,gain,offset_ml,flow_ml_s,repeatability_percent\n")));
        yard.Write("small.printer.yaml", PlanYard.Printer + "\nneedles: needles.csv\n");
        (OrderReading reading, PlanningResult result) = yard.Plan(order);

        Assert.Equal([], reading.Diagnostics.Concat(result.Findings).Where(finding => finding.Severity == Severity.Error));
        PlanRules.AssertHeld(reading, result);
        Assert.DoesNotContain(result.Plan!.Bins.SelectMany(bin => bin.Units), unit => Covers(unit, result.Plan, column, row % 6) || Covers(unit, result.Plan, column, row % 6 + 6));
    }

    private static (int Column, int Row) Middle(PlannedUnit unit, OrderPlan plan)
    {
        Footing footing = plan.Footings[0];
        return (unit.Column + footing.Columns / 2, unit.Row + footing.Rows / 2);
    }

    private static bool Covers(PlannedUnit unit, OrderPlan plan, int column, int row)
    {
        Footing footing = plan.Footings.Single(f => f.Line == (unit.Mark.StartsWith("ST", StringComparison.Ordinal) ? 0 : 1));
        (int columns, int rows) = (unit.QuarterTurns & 1) == 0 ? (footing.Columns, footing.Rows) : (footing.Rows, footing.Columns);
        return column >= unit.Column && column < unit.Column + columns && row >= unit.Row && row < unit.Row + rows;
    }
}
