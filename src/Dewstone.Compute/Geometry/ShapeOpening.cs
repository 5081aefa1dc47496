namespace Dewstone.Compute.Geometry;

/// <summary>One opening of a shape: a tunnel, a formed cavity, or one hollow of a scatter.</summary>
/// <param name="Name">Name from the description; a scattered hollow has its scatter's.</param>
/// <param name="Tunnel">Index among the unit's tunnels; -1 for a hollow.</param>
/// <param name="Cavity">Index among the unit's cavities; -1 for a tunnel.</param>
/// <param name="Hollow">Number within its scatter, from 0; -1 when it is none of a scatter.</param>
public sealed record ShapeOpening(string Name, int Tunnel, int Cavity, int Hollow)
{
    /// <summary>First of its parts in the shape's table.</summary>
    internal int FirstPart { get; init; }

    /// <summary>How many parts it has.</summary>
    internal int Parts { get; init; }
}
