namespace Dewstone.Compute.Numerics;

/// <summary>A closed surface of triangles with shared corners.</summary>
public sealed class SurfaceMesh
{
    /// <summary>
    /// Corners, x y z one after another, in the unit of the cell edges, measured from the grid's lower corner (cell centres lie half an edge
    /// in).
    /// </summary>
    public required float[] Positions { get; init; }

    /// <summary>Three corner numbers a triangle, counter-clockwise seen from the empty side.</summary>
    public required int[] Triangles { get; init; }

    /// <summary>Area of the surface, edge unit squared.</summary>
    public required double Area { get; init; }

    /// <summary>Volume the surface encloses, edge unit cubed.</summary>
    public required double Volume { get; init; }
}
