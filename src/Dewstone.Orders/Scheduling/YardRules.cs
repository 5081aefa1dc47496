namespace Dewstone.Orders.Scheduling;

/// <summary>
/// What the yard allows. A print is attended: setting up, printing and the change of the bin lie in one shift as a whole. A bin is taken from the begin of
/// setting up to the end of digging out, and stands in a curing place from the end of printing on. One crew digs out one bin after the other, each within one of
/// its days.
/// </summary>
public sealed record YardRules
{
    /// <summary>When the printers are attended.</summary>
    public WorkCalendar Shifts { get; init; } = WorkCalendar.Always;

    /// <summary>When the crew digs out; null when digging out waits for nobody.</summary>
    public WorkCalendar? Crew { get; init; }

    /// <summary>Rolling a full bin out and the next in, minutes.</summary>
    public int Change { get; init; }

    /// <summary>Bins in circulation; null for enough.</summary>
    public int? Bins { get; init; }

    /// <summary>Curing places; null for enough.</summary>
    public int? CuringPlaces { get; init; }

    /// <summary>Mix; null for enough.</summary>
    public SiloStock? Stock { get; init; }
}
