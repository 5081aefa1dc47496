using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>An opening that runs right through the outer box.</summary>
public abstract record Tunnel
{
    /// <summary>Name for people, unique among the unit's openings.</summary>
    public required string Name { get; init; }

    /// <summary>Cross-section.</summary>
    public required Section Section { get; init; }

    /// <summary>Diameter of the least ball that must still pass once set; null when not asked for.</summary>
    public Length? Clear { get; init; }
}
