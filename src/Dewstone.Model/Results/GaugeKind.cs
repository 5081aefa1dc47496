namespace Dewstone.Model.Results;

/// <summary>What a gauge is held against.</summary>
public enum GaugeKind
{
    /// <summary>Largest gauge ball that gets through an opening.</summary>
    Opening,

    /// <summary>Caliper over a wall, where it is thinnest.</summary>
    Wall,
}
