namespace Dewstone.Model.Results;

/// <summary>A scan of a printed unit, in the scanner's own frame.</summary>
public sealed record UnitScan
{
    /// <summary>Points, x y z one after another, metres; of a surface the three corners of each triangle.</summary>
    public required float[] Positions { get; init; }

    /// <summary>Whether it is a surface of triangles.</summary>
    public required bool IsSurface { get; init; }

    /// <summary>Points, or corners of triangles.</summary>
    public int Count => Positions.Length / 3;
}
