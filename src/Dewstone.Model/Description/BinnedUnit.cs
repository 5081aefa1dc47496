using Dewstone.Model.Lattices;

namespace Dewstone.Model.Description;

/// <summary>A reef unit that shares its bin with others.</summary>
public sealed record BinnedUnit
{
    /// <summary>Its mark, such as <c>WB-001</c>; no two of a bin are alike.</summary>
    public required string Mark { get; init; }

    /// <summary>The unit as described, with the seeds it was drawn with.</summary>
    public required ReefUnit Unit { get; init; }

    /// <summary>Where it stands in the printer frame.</summary>
    public required UnitPlacement Placement { get; init; }
}
