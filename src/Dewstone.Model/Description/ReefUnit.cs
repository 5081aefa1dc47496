using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>The object to print, as described: outer box, what is taken away, what stays. Unit frame: origin at the lower corner of the outer box, z up.</summary>
public sealed record ReefUnit
{
    /// <summary>Name for people.</summary>
    public required string Name { get; init; }

    /// <summary>Edge lengths of the outer box, metres.</summary>
    public required Size3 OuterBox { get; init; }

    /// <summary>Radius of the outer edges and corners; 0 for sharp ones.</summary>
    public Length Rounding { get; init; }

    /// <summary>Radius of the circular fillet where openings meet each other and the outer faces; 0 for sharp edges.</summary>
    public Length Blend { get; init; }

    /// <summary>Bumpiness of the faces; null for plain ones.</summary>
    public Relief? Relief { get; init; }

    /// <summary>Tunnels, in the order of the file.</summary>
    public IReadOnlyList<Tunnel> Tunnels { get; init; } = [];

    /// <summary>Cavities, in the order of the file.</summary>
    public IReadOnlyList<Cavity> Cavities { get; init; } = [];

    /// <summary>Zones that stay solid whatever openings say, in the order of the file.</summary>
    public IReadOnlyList<KeepZone> Keep { get; init; } = [];

    /// <summary>How it is lifted; null when not said.</summary>
    public Lifting? Lifting { get; init; }

    /// <summary>What the predicted solid is held against.</summary>
    public Requirements Require { get; init; } = new();

    /// <summary>Placement fixed by the file; members that are null are free.</summary>
    public PlacementWish Place { get; init; } = new();
}
