namespace Dewstone.Orders.Scheduling;

/// <summary>When work can be done: windows by time that do not touch, or always.</summary>
public sealed class WorkCalendar
{
    private readonly TimeWindow[] windows;

    /// <summary>Work in windows.</summary>
    /// <param name="windows">By time; touching ones are joined.</param>
    public WorkCalendar(IEnumerable<TimeWindow> windows)
    {
        ArgumentNullException.ThrowIfNull(windows);
        List<TimeWindow> joined = [];
        foreach (TimeWindow window in windows)
        {
            if (joined.Count > 0 && window.From <= joined[^1].To)
            {
                joined[^1] = new TimeWindow(joined[^1].From, Math.Max(joined[^1].To, window.To));
            }
            else
            {
                joined.Add(window);
            }
        }

        this.windows = [.. joined];
    }

    /// <summary>Around the clock.</summary>
    public static WorkCalendar Always { get; } = new([new TimeWindow(0, int.MaxValue)]);

    /// <summary>The windows.</summary>
    public IReadOnlyList<TimeWindow> Windows => windows;

    /// <summary>Longest window, minutes.</summary>
    public int Longest => windows.Length == 0 ? 0 : windows.Max(window => window.To - window.From);

    /// <summary>Earliest begin of work that lies within one window.</summary>
    /// <param name="from">Not before, minutes.</param>
    /// <param name="minutes">How long it takes.</param>
    /// <returns>Begin; null when there is none.</returns>
    public int? Earliest(int from, int minutes)
    {
        int low = 0, high = windows.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = windows[middle].To < from ? (middle + 1, high) : (low, middle);
        }

        for (int index = low; index < windows.Length; index++)
        {
            int begin = Math.Max(from, windows[index].From);
            if (minutes <= windows[index].To - begin)
            {
                return begin;
            }
        }

        return null;
    }

    /// <summary>All begins of work of a length up to a time, as ranges.</summary>
    /// <param name="minutes">How long it takes.</param>
    /// <param name="end">Latest end.</param>
    /// <returns>First and last begin, alternating, by time.</returns>
    public long[] Begins(int minutes, int end) =>
        [.. windows.Select(w => (From: (long)w.From, Last: (long)Math.Min(w.To, end) - minutes)).Where(w => w.From <= w.Last).SelectMany(w => (long[])[w.From, w.Last])];
}
