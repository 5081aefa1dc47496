using Dewstone.Model.Description;
using Dewstone.Orders.Scheduling;

namespace Dewstone.Orders.Plans;

/// <summary>
/// The order's days in minutes from 0:00 of its first day, yard's local time. The crew begins at <see cref="CrewFrom"/> on the days on which a shift begins, daily
/// when the printers run around the clock; deliveries arrive at that time too. Choices of ours, no source.
/// </summary>
public sealed class YardCalendar
{
    /// <summary>Begin of the crew's day, minutes after midnight.</summary>
    public const int CrewFrom = 8 * 60;

    /// <summary>Minutes of a day.</summary>
    public const int Day = 24 * 60;

    // How far is looked when the due date cannot be held.
    private const int DaysBeyond = 400;

    private readonly DateTime zero;
    private readonly int days;

    /// <summary>The calendar of an order.</summary>
    /// <param name="order">The order.</param>
    public YardCalendar(Order order)
    {
        ArgumentNullException.ThrowIfNull(order);
        zero = order.Start.ToDateTime(TimeOnly.MinValue);
        days = order.Due.DayNumber - order.Start.DayNumber + DaysBeyond;
        Due = (order.Due.DayNumber - order.Start.DayNumber + 1) * Day;
        Shifts = order.Shifts is { } shifts ? Windows(shifts.Days, Minutes(shifts.From), Length(shifts)) : WorkCalendar.Always;
        Crew = order.Crew is { } crew ? Windows(order.Shifts?.Days, CrewFrom, (int)(crew.Hours.Seconds / 60.0 + 1e-9)) : null;
    }

    /// <summary>End of the due date, minutes.</summary>
    public int Due { get; }

    /// <summary>When the printers are attended.</summary>
    public WorkCalendar Shifts { get; }

    /// <summary>When the crew works; null when the order tells of none.</summary>
    public WorkCalendar? Crew { get; }

    /// <summary>A time of the yard.</summary>
    /// <param name="minutes">Minutes.</param>
    /// <returns>Local time.</returns>
    public DateTime Time(int minutes) => zero.AddMinutes(minutes);

    /// <summary>When deliveries of a day arrive.</summary>
    /// <param name="day">The day; one before the order's first counts as its first minute.</param>
    /// <returns>Minutes.</returns>
    public int Arrival(DateOnly day) => Math.Max(0, (int)(day.ToDateTime(TimeOnly.MinValue) - zero).TotalMinutes + CrewFrom);

    private WorkCalendar Windows(IReadOnlyList<DayOfWeek>? on, int from, int length) => new(
        Enumerable.Range(0, days).Where(day => on is null || on.Contains(zero.AddDays(day).DayOfWeek)).Select(day => new TimeWindow(day * Day + from, day * Day + from + length)));

    private static int Minutes(TimeOnly time) => time.Hour * 60 + time.Minute;

    // To the next day when not after the begin.
    private static int Length(Shifts shifts) => Minutes(shifts.To) - Minutes(shifts.From) + (shifts.To > shifts.From ? 0 : Day);
}
