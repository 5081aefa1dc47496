using Dewstone.Model.Quantities;

namespace Dewstone.Orders.Plans;

/// <summary>One filling of a bin: which units, where, on which printer and when.</summary>
public sealed record PlannedBin
{
    /// <summary>Name of its job: the printer file's name without its suffix, and its number in order of printing there, such as <c>yard-001</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Printer, from 0, in the order's own list.</summary>
    public required int Printer { get; init; }

    /// <summary>Whether every other layer is shifted by half a pitch; the same for all units of the bin.</summary>
    public required bool ShiftedLayers { get; init; }

    /// <summary>Height of the units' lower faces above the loose layers: the z phase all units of the bin were solved with.</summary>
    public required Length ShiftZ { get; init; }

    /// <summary>The units, by mark.</summary>
    public required IReadOnlyList<PlannedUnit> Units { get; init; }

    /// <summary>Begin of setting up, yard's local time.</summary>
    public required DateTime Start { get; init; }

    /// <summary>End of the last step, yard's local time.</summary>
    public required DateTime PrintEnd { get; init; }

    /// <summary>Before this nothing may be dug out, yard's local time.</summary>
    public required DateTime DigNotBefore { get; init; }

    /// <summary>Begin of digging out, yard's local time.</summary>
    public required DateTime DigStart { get; init; }

    /// <summary>End of digging out; the bin is free from here on.</summary>
    public required DateTime DigEnd { get; init; }

    /// <summary>Dry mix spread, all layers over the whole bin.</summary>
    public required Mass Mix { get; init; }
}
