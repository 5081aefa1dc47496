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

    /// <summary>Number of triangles.</summary>
    public int Count => Triangles.Length / 3;

    /// <summary>Centre of a triangle.</summary>
    /// <param name="triangle">Triangle, from 0.</param>
    /// <returns>Mean of its corners, edge unit.</returns>
    public (float X, float Y, float Z) Centre(int triangle)
    {
        ReadOnlySpan<float> a = Corner(triangle, 0), b = Corner(triangle, 1), c = Corner(triangle, 2);
        return ((a[0] + b[0] + c[0]) / 3f, (a[1] + b[1] + c[1]) / 3f, (a[2] + b[2] + c[2]) / 3f);
    }

    /// <summary>Area of a triangle.</summary>
    /// <param name="triangle">Triangle, from 0.</param>
    /// <returns>Edge unit squared.</returns>
    public double TriangleArea(int triangle)
    {
        ReadOnlySpan<float> a = Corner(triangle, 0), b = Corner(triangle, 1), c = Corner(triangle, 2);
        double ux = (double)b[0] - a[0], uy = (double)b[1] - a[1], uz = (double)b[2] - a[2];
        double vx = (double)c[0] - a[0], vy = (double)c[1] - a[1], vz = (double)c[2] - a[2];
        double nx = uy * vz - uz * vy, ny = uz * vx - ux * vz, nz = ux * vy - uy * vx;
        return 0.5 * Math.Sqrt(nx * nx + ny * ny + nz * nz);
    }

    private ReadOnlySpan<float> Corner(int triangle, int corner) => Positions.AsSpan(3 * Triangles[3 * triangle + corner], 3);
}
