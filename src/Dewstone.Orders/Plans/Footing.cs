using Dewstone.Model.Description;

namespace Dewstone.Orders.Plans;

/// <summary>How the units of one line of the order stand against the needles of one printer: the same for all of them, so that they can share bins.</summary>
public sealed record Footing
{
    /// <summary>Line of the order, from 0.</summary>
    public required int Line { get; init; }

    /// <summary>Printer, from 0, in the order's own list.</summary>
    public required int Printer { get; init; }

    /// <summary>Placement the units are solved with: no free member; quarter turns, shift from whole pitches, straight or shifted layers.</summary>
    public required PlacementWish Wish { get; init; }

    /// <summary>Columns of the grid its outer box touches, as solved.</summary>
    public required int Columns { get; init; }

    /// <summary>Rows of the grid its outer box touches, as solved.</summary>
    public required int Rows { get; init; }

    /// <summary>Layers from the bin's floor to the top of the unit, loose ones below included.</summary>
    public required int Layers { get; init; }
}
