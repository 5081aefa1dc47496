namespace Dewstone.Model.Results;

/// <summary>What holes and walls come out with one way of layering.</summary>
public sealed record LayeringLimits
{
    /// <summary>Whether every other layer is shifted by half a pitch.</summary>
    public required bool Shifted { get; init; }

    /// <summary>Holes along x or y.</summary>
    public required HoleLimits LevelHoles { get; init; }

    /// <summary>Holes along z.</summary>
    public required HoleLimits UprightHoles { get; init; }

    /// <summary>Upright walls, normal to x or y.</summary>
    public required WallLimits UprightWalls { get; init; }

    /// <summary>Level slabs, normal to z.</summary>
    public required WallLimits Slabs { get; init; }
}
