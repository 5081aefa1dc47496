using Dewstone.Model.Description;
using Dewstone.Orders.Scheduling;

namespace Dewstone.Orders.Plans;

/// <summary>An order's bins and its yard in the terms of the scheduler.</summary>
internal static class OrderTasks
{
    /// <summary>The bins as tasks.</summary>
    /// <param name="order">The order.</param>
    /// <param name="calendar">Its days.</param>
    /// <param name="bins">The bins.</param>
    /// <param name="printers">Number of printers.</param>
    /// <returns>One task a bin.</returns>
    public static BinTask[] Tasks(Order order, YardCalendar calendar, IReadOnlyList<BinContent> bins, int printers)
    {
        int stated = order.Bins is { } stock ? (int)Math.Ceiling(stock.SetBeforeDig.Minutes - 1e-9) : 0;
        return [.. bins.Select(bin => new BinTask
        {
            Minutes = [.. Enumerable.Range(0, printers).Select(printer => printer == bin.Printer ? bin.Minutes : (int?)null)],
            Set = Math.Max(stated, bin.SetMinutes),
            Dig = order.Crew is { } crew ? (int)Math.Ceiling(bin.Spots.Count * crew.DigOut.Minutes - 1e-9) : 0,
            Due = calendar.Due,
            Units = bin.Spots.Count,
            Spread = (int)Math.Ceiling(bin.SpreadKilograms),
            Reused = (int)Math.Floor(bin.ReusedKilograms),
        })];
    }

    /// <summary>What the yard allows.</summary>
    /// <param name="order">The order.</param>
    /// <param name="calendar">Its days.</param>
    /// <returns>The rules.</returns>
    public static YardRules Rules(Order order, YardCalendar calendar) => new()
    {
        Shifts = calendar.Shifts,
        Crew = calendar.Crew,
        Change = BinFiller.Change(order),
        Bins = order.Bins?.Count,
        CuringPlaces = order.Bins?.CuringPlaces,
        Stock = order.MixStock is not { } stock ? null : new SiloStock(
            Kilograms(stock.OnHand.Kilograms), Kilograms(stock.Silo.Kilograms),
            [.. stock.Deliveries.Select(delivery => new StockDelivery(calendar.Arrival(delivery.On), Kilograms(delivery.Mass.Kilograms)))]),
    };

    private static int Kilograms(double mass) => (int)Math.Floor(mass + 1e-6);
}
