using System.Globalization;
using System.Text;
using Dewstone.Jobs.Emission;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;

namespace Dewstone.Orders.Plans;

/// <summary>
/// The plan for the crew's phones, iCalendar (RFC 5545): an entry for each bin's dig-out and one for each bin's print, in floating local time, so that it shows the yard's hours
/// wherever the phone is. The same plan gives the same bytes.
/// </summary>
internal static class CrewCalendar
{
    /// <summary>Makes the calendar.</summary>
    /// <param name="plan">The plan.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(OrderPlan plan)
    {
        Ical.Net.Calendar calendar = new() { ProductId = "-//Dewstone//order plan//EN" };
        calendar.AddProperty("X-WR-CALNAME", plan.Order);
        // The stamp must stand in every entry; a clock would make each run's file another.
        CalDateTime stamp = new(DateTime.SpecifyKind(plan.Bins.Min(bin => bin.Start), DateTimeKind.Utc), "UTC");
        foreach (PlannedBin bin in plan.Bins)
        {
            string marks = string.Join(", ", bin.Units.Select(unit => unit.Mark));
            calendar.Events.Add(Entry(plan, stamp, $"print-{bin.Name}", $"Print {bin.Name}: {marks}", bin.Start, bin.PrintEnd, "Setting up and printing; then roll the bin out to set."));
            calendar.Events.Add(Entry(
                plan, stamp, $"dig-{bin.Name}", $"Dig out {bin.Name}: {marks}", bin.DigStart, bin.DigEnd,
                $"Not before {bin.DigNotBefore.ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture)}. The label of each unit tells its own earliest age."));
        }

        string text = new CalendarSerializer().SerializeToString(calendar) ?? throw new InvalidOperationException("The calendar was not written.");
        return new EmittedFile("crew.ics", Encoding.UTF8.GetBytes(text));
    }

    private static CalendarEvent Entry(OrderPlan plan, CalDateTime stamp, string id, string summary, DateTime from, DateTime to, string description) => new()
    {
        Uid = $"{id}-{plan.OrderHash[..Math.Min(16, plan.OrderHash.Length)]}@dewstone.invalid",
        DtStamp = stamp,
        Summary = summary,
        Description = description,
        Start = Floating(from),
        End = Floating(to),
    };

    private static CalDateTime Floating(DateTime time) => new(time.Year, time.Month, time.Day, time.Hour, time.Minute, 0);
}
