using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;

namespace Dewstone.Compute.Dosing;

/// <summary>Where the unit stands in the bin, or why it cannot.</summary>
public sealed record PlacementResult
{
    /// <summary>Where the unit stands; null when there is an error.</summary>
    public UnitPlacement? Placement { get; init; }

    /// <summary>Needle positions over the unit and two pitches around it; null when there is an error.</summary>
    public Lattice? Lattice { get; init; }

    /// <summary>Fine cells over those positions; null when there is an error.</summary>
    public CellGrid? Cells { get; init; }

    /// <summary>Findings DW4xxx, in order.</summary>
    public required IReadOnlyList<Diagnostic> Findings { get; init; }
}
