using Dewstone.Model.Description;
using Dewstone.Orders.Listing;

namespace Dewstone.Orders.Tests.Listing;

public sealed class OrderListingTests
{
    [Fact]
    public void Units_are_listed_line_by_line_with_marks_of_three_digits_or_more()
    {
        Order order = new()
        {
            Name = "Two kinds",
            Start = new DateOnly(2027, 3, 1),
            Due = new DateOnly(2027, 6, 30),
            Units =
            [
                new OrderLine { File = "a.unit.yaml", Quantity = 2, Mark = "WB", VarySeed = 7, Redraw = 3 },
                new OrderLine { File = "b.unit.yaml", Quantity = 1000, Mark = "TS" },
            ],
        };

        IReadOnlyList<OrderedUnit> units = OrderListing.Of(order);

        Assert.Equal(1002, units.Count);
        Assert.Equal(new OrderedUnit { Mark = "WB-001", Line = 0, Ordinal = 1, VarySeed = 7, Redraw = 3 }, units[0]);
        Assert.Equal("WB-002", units[1].Mark);
        Assert.Equal(new OrderedUnit { Mark = "TS-0001", Line = 1, Ordinal = 1, VarySeed = null, Redraw = 0 }, units[2]);
        Assert.Equal("TS-1000", units[^1].Mark);
        Assert.Equal(units.Count, units.Select(unit => unit.Mark).Distinct(StringComparer.Ordinal).Count());
    }
}
