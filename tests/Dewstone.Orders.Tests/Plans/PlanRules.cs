using Dewstone.Model.Description;
using Dewstone.Orders.Listing;
using Dewstone.Orders.Plans;
using Dewstone.Reading;

namespace Dewstone.Orders.Tests.Plans;

/// <summary>Holds a plan against its order minute by minute and footprint by footprint, with nothing of the planner's own but the plan and what its bins take.</summary>
internal static class PlanRules
{
    public static void AssertHeld(OrderReading reading, PlanningResult result)
    {
        OrderPlan plan = result.Plan!;
        Order order = reading.Order!;
        Assert.Equal(OrderListing.Of(order).Select(unit => unit.Mark).Order(StringComparer.Ordinal), plan.Bins.SelectMany(bin => bin.Units).Select(unit => unit.Mark).Order(StringComparer.Ordinal));
        Assert.Equal(plan.Bins.Count, plan.Bins.Select(bin => bin.Name).Distinct().Count());
        Dictionary<string, int> lineOf = OrderListing.Of(order).ToDictionary(unit => unit.Mark, unit => unit.Line);
        foreach (PlannedBin bin in plan.Bins)
        {
            AssertPacked(reading, plan, bin, lineOf);
            AssertHours(order, bin);
        }

        AssertPrinters(order, plan);
        AssertCounts(order, plan);
        AssertStock(order, plan, result.Contents);
    }

    private static void AssertPacked(OrderReading reading, OrderPlan plan, PlannedBin bin, Dictionary<string, int> lineOf)
    {
        Printer printer = reading.Jobs[lineOf[bin.Units[0].Mark]][bin.Printer]!.Job!.Printer;
        int pitch = (int)Math.Round(printer.Grid.Pitch.Millimetres), wide = (int)Math.Round(printer.Bin.SizeX.Millimetres / pitch), deep = (int)Math.Round(printer.Bin.SizeY.Millimetres / pitch);
        int gap = (int)Math.Ceiling(reading.Order!.Gap!.Value.Millimetres / pitch - 1e-9);
        bool[,] taken = new bool[wide, deep];
        int layers = 0;
        foreach (PlannedUnit unit in bin.Units)
        {
            Footing footing = plan.Footings.Single(f => f.Line == lineOf[unit.Mark] && f.Printer == bin.Printer);
            Assert.Equal(bin.ShiftedLayers, footing.Wish.ShiftedLayers);
            Assert.Equal(bin.ShiftZ.Metres, footing.Wish.Shift!.Value.Z);
            (int columns, int rows) = (unit.QuarterTurns & 1) == 0 ? (footing.Columns, footing.Rows) : (footing.Rows, footing.Columns);
            layers = Math.Max(layers, footing.Layers);
            for (int column = unit.Column - gap; column < unit.Column + columns + gap; column++)
            {
                for (int row = unit.Row - gap; row < unit.Row + rows + gap; row++)
                {
                    bool own = column >= unit.Column && column < unit.Column + columns && row >= unit.Row && row < unit.Row + rows;
                    if (own || (column >= 0 && row >= 0 && column < wide && row < deep))
                    {
                        // Out of range throws: a unit stands within the bin. Others may not reach nearer than the gap.
                        Assert.False(taken[column, row], $"{unit.Mark} in {bin.Name}");
                    }
                }
            }

            for (int column = unit.Column; column < unit.Column + columns; column++)
            {
                for (int row = unit.Row; row < unit.Row + rows; row++)
                {
                    taken[column, row] = true;
                }
            }

        }

        double mix = layers * printer.Grid.LayerHeight.Metres * printer.Bin.SizeX.Metres * printer.Bin.SizeY.Metres * reading.Jobs[lineOf[bin.Units[0].Mark]][bin.Printer]!.Job!.LooseDensity.KilogramsPerCubicMetre;
        Assert.Equal(mix, bin.Mix.Kilograms, 0.01);
        Assert.True(mix <= (reading.Order.Bins?.Handling.Kilograms ?? double.PositiveInfinity));
    }

    private static void AssertHours(Order order, PlannedBin bin)
    {
        Assert.True(bin.PrintEnd > bin.Start && bin.DigNotBefore >= bin.PrintEnd && bin.DigStart >= bin.DigNotBefore && bin.DigEnd >= bin.DigStart);
        if (order.Bins is { } bins)
        {
            Assert.True(bin.DigNotBefore - bin.PrintEnd >= TimeSpan.FromSeconds(bins.SetBeforeDig.Seconds));
        }

        if (order.Shifts is { } shifts)
        {
            DateTime from = bin.Start.Date + shifts.From.ToTimeSpan();
            from = from > bin.Start ? from.AddDays(-1) : from;
            DateTime to = from.Date + shifts.To.ToTimeSpan();
            to = to <= from ? to.AddDays(1) : to;
            Assert.Contains(from.DayOfWeek, shifts.Days);
            Assert.True(from >= order.Start.ToDateTime(TimeOnly.MinValue) && bin.Start >= from && bin.PrintEnd.AddSeconds(order.Bins!.Change.Seconds) <= to, bin.Name);
        }

        if (order.Crew is { } crew)
        {
            Assert.Equal(bin.Units.Count * crew.DigOut.Seconds, (bin.DigEnd - bin.DigStart).TotalSeconds, 60.0);
            DateTime from = bin.DigStart.Date.AddHours(8);
            Assert.True(bin.DigStart >= from && bin.DigEnd <= from.AddSeconds(crew.Hours.Seconds), bin.Name);
            Assert.True(order.Shifts is null || order.Shifts.Days.Contains(bin.DigStart.DayOfWeek));
        }
    }

    private static void AssertPrinters(Order order, OrderPlan plan)
    {
        TimeSpan change = TimeSpan.FromSeconds(order.Bins?.Change.Seconds ?? 0.0);
        foreach (IGrouping<int, PlannedBin> printer in plan.Bins.GroupBy(bin => bin.Printer))
        {
            PlannedBin[] byStart = [.. printer.OrderBy(bin => bin.Start)];
            Assert.All(byStart.Zip(byStart.Skip(1)), pair => Assert.True(pair.Second.Start >= pair.First.PrintEnd + change));
        }

        PlannedBin[] byDig = [.. plan.Bins.OrderBy(bin => bin.DigStart)];
        Assert.All(byDig.Zip(byDig.Skip(1)), pair => Assert.True(order.Crew is null || pair.Second.DigStart >= pair.First.DigEnd));
    }

    private static void AssertCounts(Order order, OrderPlan plan)
    {
        foreach (DateTime at in plan.Bins.SelectMany(bin => new[] { bin.Start, bin.PrintEnd }))
        {
            Assert.True(plan.Bins.Count(bin => bin.Start <= at && bin.DigEnd > at) <= (order.Bins?.Count ?? int.MaxValue));
            Assert.True(plan.Bins.Count(bin => bin.PrintEnd <= at && bin.DigEnd > at) <= (order.Bins?.CuringPlaces ?? int.MaxValue));
        }
    }

    private static void AssertStock(Order order, OrderPlan plan, IReadOnlyList<BinContent> contents)
    {
        if (order.MixStock is not { } stock)
        {
            return;
        }

        List<(DateTime At, int Kind, double Kilograms)> moves = [.. stock.Deliveries.Select(d => (d.On.ToDateTime(new TimeOnly(8, 0)), 0, d.Mass.Kilograms))];
        for (int bin = 0; bin < contents.Count; bin++)
        {
            moves.Add((plan.Bins[bin].DigEnd, 1, contents[bin].ReusedKilograms));
            moves.Add((plan.Bins[bin].Start, 2, -contents[bin].SpreadKilograms));
        }

        double level = stock.OnHand.Kilograms;
        foreach ((DateTime _, int kind, double kilograms) in moves.OrderBy(move => move.At).ThenBy(move => move.Kind))
        {
            level += kind == 0 ? Math.Clamp(stock.Silo.Kilograms - level, 0.0, kilograms) : kilograms;
            // The plan reckons in whole kilograms, on the safe side.
            Assert.True(level > -1.0);
        }
    }
}
