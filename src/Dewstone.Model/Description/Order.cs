using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>An order of many units by a date.</summary>
public sealed record Order
{
    /// <summary>Name for people.</summary>
    public required string Name { get; init; }

    /// <summary>First day of printing.</summary>
    public required DateOnly Start { get; init; }

    /// <summary>Day by which all must be delivered.</summary>
    public required DateOnly Due { get; init; }

    /// <summary>What is ordered.</summary>
    public required IReadOnlyList<OrderLine> Units { get; init; }

    /// <summary>Paths of the printer files, as written; they win over what a unit names.</summary>
    public IReadOnlyList<string> PrinterFiles { get; init; } = [];

    /// <summary>Path of the mix file, as written; it wins over what a unit names. Null for each unit's own.</summary>
    public string? MixFile { get; init; }

    /// <summary>When the printers are attended; null for around the clock.</summary>
    public Shifts? Shifts { get; init; }

    /// <summary>Crew that digs out; null when not said.</summary>
    public Crew? Crew { get; init; }

    /// <summary>Bins that circulate; null when not said.</summary>
    public BinStock? Bins { get; init; }

    /// <summary>Curing temperature; null for 15 degC.</summary>
    public Temperature? Curing { get; init; }

    /// <summary>Least distance between units in a bin; null when not said.</summary>
    public Length? Gap { get; init; }

    /// <summary>Mix in stock and to come; null when not said.</summary>
    public MixStock? MixStock { get; init; }

    /// <summary>Transport; null when not said.</summary>
    public Transport? Transport { get; init; }

    /// <summary>Layout at sea; null when not said.</summary>
    public SitePlan? SitePlan { get; init; }
}
