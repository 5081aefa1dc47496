namespace Dewstone.Orders.Listing;

/// <summary>One reef unit of an order, known by its mark from the plan to the sea floor.</summary>
public sealed record OrderedUnit
{
    /// <summary>Mark, such as <c>WB-001</c>: the line's letters and the ordinal, with three digits or as many as the line's quantity has.</summary>
    public required string Mark { get; init; }

    /// <summary>Line of the order, from 0.</summary>
    public required int Line { get; init; }

    /// <summary>Number within its line, from 1.</summary>
    public required int Ordinal { get; init; }

    /// <summary>Seed the line's draws begin with; null when all units of the line are alike.</summary>
    public required ulong? VarySeed { get; init; }

    /// <summary>How often a draw that fails may be replaced by the next.</summary>
    public required int Redraw { get; init; }
}
