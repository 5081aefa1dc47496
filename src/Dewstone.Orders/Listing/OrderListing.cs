using System.Globalization;
using Dewstone.Model.Description;

namespace Dewstone.Orders.Listing;

/// <summary>The units of an order, one by one, in the one order that everything else counts in: line by line, then by ordinal.</summary>
public static class OrderListing
{
    /// <summary>Lists the units of an order.</summary>
    /// <param name="order">The order.</param>
    /// <returns>All units; their marks differ, since the letters of the lines do.</returns>
    public static IReadOnlyList<OrderedUnit> Of(Order order)
    {
        ArgumentNullException.ThrowIfNull(order);
        List<OrderedUnit> units = [];
        for (int line = 0; line < order.Units.Count; line++)
        {
            OrderLine asked = order.Units[line];
            int digits = Math.Max(3, asked.Quantity.ToString(CultureInfo.InvariantCulture).Length);
            for (int ordinal = 1; ordinal <= asked.Quantity; ordinal++)
            {
                units.Add(new OrderedUnit
                {
                    Mark = $"{asked.Mark}-{ordinal.ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0')}",
                    Line = line,
                    Ordinal = ordinal,
                    VarySeed = asked.VarySeed,
                    Redraw = asked.Redraw,
                });
            }
        }

        return units;
    }
}
