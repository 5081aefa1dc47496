using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>A hollow: one form, or many scattered ones.</summary>
public abstract record Cavity
{
    /// <summary>Name for people, unique among the unit's openings.</summary>
    public required string Name { get; init; }

    /// <summary>Diameter of the least ball that must still get in once set; null when not asked for.</summary>
    public Length? Clear { get; init; }
}
