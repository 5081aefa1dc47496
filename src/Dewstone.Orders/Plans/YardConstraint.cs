using Dewstone.Model.Description;
using Dewstone.Orders.Scheduling;

namespace Dewstone.Orders.Plans;

/// <summary>A constraint of an order that can be left out to see whether it binds.</summary>
/// <param name="Key">Key of the order's file.</param>
/// <param name="Words">What it allows, for people.</param>
/// <param name="LeaveOut">Tasks and rules without it.</param>
internal sealed record YardConstraint(string Key, string Words, Func<BinTask[], YardRules, (BinTask[] Tasks, YardRules Rules)> LeaveOut)
{
    /// <summary>The constraints an order states, in the order in which they are tried.</summary>
    /// <param name="order">The order.</param>
    /// <param name="bins">Its bins.</param>
    /// <returns>Those it states.</returns>
    public static IReadOnlyList<YardConstraint> Of(Order order, IReadOnlyList<BinContent> bins)
    {
        List<YardConstraint> all = [];
        if (order.MixStock is { } stock)
        {
            double tons = (stock.OnHand.Kilograms + stock.Deliveries.Sum(delivery => delivery.Mass.Kilograms)) / 1000.0;
            all.Add(new("mix_stock", $"{tons:0.#} t of mix on hand and delivered", (tasks, rules) => (tasks, rules with { Stock = null })));
        }

        if (order.Bins is { } stated)
        {
            all.Add(new("bins.count", $"{stated.Count} bins in circulation", (tasks, rules) => (tasks, rules with { Bins = null })));
            all.Add(new("bins.curing_places", $"{stated.CuringPlaces} curing places", (tasks, rules) => (tasks, rules with { CuringPlaces = null })));
            all.Add(new("bins.set_before_dig", $"{stated.SetBeforeDig.Seconds / 3600.0:0.#} h to set before dig-out", (tasks, rules) =>
                ([.. tasks.Select((task, bin) => task with { Set = bins[bin].SetMinutes })], rules)));
        }

        if (order.Crew is { } crew)
        {
            all.Add(new("crew", $"{crew.Hours.Seconds / 3600.0:0.#} h of the crew a day, {crew.DigOut.Minutes:0.#} min a unit", (tasks, rules) => (tasks, rules with { Crew = null })));
        }

        if (order.Shifts is not null)
        {
            all.Add(new("shifts", "the shifts of the printers", (tasks, rules) => (tasks, rules with { Shifts = WorkCalendar.Always })));
        }

        return all;
    }
}
