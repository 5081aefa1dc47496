using Dewstone.Model.Results;

namespace Dewstone.Compute.Numerics;

/// <summary>The surface on which a field has a given level, as a closed mesh, with its area and the volume it encloses.</summary>
/// <remarks>
/// Marching cubes on cell centres with linear interpolation (Lorensen and Cline, "Marching cubes: a high resolution 3D surface construction
/// algorithm", 1987; from memory), with cases of our own (<see cref="CubeCases"/>). Where the set cells reach the grid's edge the surface
/// runs along the edge itself, half a cell beyond the last centre, as if all were empty outside. The volume is the sum of v0 . (v1 x v2) / 6
/// over the triangles. A field that bends between two centres is cut where a straight one would be: for a front as steep as that of water
/// in dry mix, hand over the field raised to a power in which it is nearly straight. The bias falls with the square of the resolution: a
/// ball of radius 10 cells from its distance field has 0.3 % too little area and 0.6 % too little volume. A field of 0 and 1 has 8 to 9 %
/// too much area at any resolution: never measure that.
/// </remarks>
public static class IsoSurface
{
    /// <summary>Planes that one piece of work takes.</summary>
    private const int PlanesTogether = 4;

    /// <summary>Finds the surface.</summary>
    /// <param name="field">Values at the cell centres, finite; shape <paramref name="shape"/>.</param>
    /// <param name="shape">Cells along each axis.</param>
    /// <param name="size">Edges of a cell.</param>
    /// <param name="level">A cell is set when its value is at or above this.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>The mesh; empty when no cell is set.</returns>
    public static SurfaceMesh At(float[] field, GridShape shape, CellSize size, float level, Parallelism parallelism)
    {
        ArgumentNullException.ThrowIfNull(field);
        shape.Require(field.Length, nameof(field));
        size.Require(nameof(size));
        BitRows bits = BitRows.Of(field, level, shape, parallelism);
        SurfaceCount count = SurfaceCount.Of(bits, parallelism);
        float[] positions = new float[3 * count.Vertices];
        int[] triangles = new int[3 * count.Triangles];
        SurfaceVertices vertices = new(bits, count, field, shape, size, level);
        SurfaceTriangles faces = new(bits, count);
        Chunks.Run(bits.Planes - 1, PlanesTogether, parallelism, (first, end) =>
        {
            for (int plane = first; plane < end; plane++)
            {
                vertices.Place(plane, positions);
                faces.Lay(plane, triangles);
            }
        });
        (double area, double volume) = Measure(positions, triangles, count, parallelism);
        return new SurfaceMesh { Positions = positions, Triangles = triangles, Area = area, Volume = volume };
    }

    private static (double Area, double Volume) Measure(float[] positions, int[] triangles, SurfaceCount count, Parallelism parallelism)
    {
        double[] areas = new double[count.FirstTriangleOfPlane.Length - 1];
        double[] volumes = new double[areas.Length];
        Chunks.Run(areas.Length, PlanesTogether, parallelism, (first, end) =>
        {
            for (int plane = first; plane < end; plane++)
            {
                int start = 3 * count.FirstTriangleOfPlane[plane];
                int after = 3 * count.FirstTriangleOfPlane[plane + 1];
                (areas[plane], volumes[plane]) = MeasureTriangles(positions, triangles.AsSpan(start..after));
            }
        });
        double area = 0.0;
        double volume = 0.0;
        for (int plane = 0; plane < areas.Length; plane++)
        {
            area += areas[plane];
            volume += volumes[plane];
        }

        return (area, volume);
    }

    /// <summary>Area of some triangles and their share of the volume.</summary>
    /// <param name="positions">Corners, x y z one after another.</param>
    /// <param name="triangles">Three corner numbers a triangle.</param>
    /// <returns>Area, and volume between the triangles and the origin, each in the unit of the positions.</returns>
    internal static (double Area, double Volume) MeasureTriangles(ReadOnlySpan<float> positions, ReadOnlySpan<int> triangles)
    {
        double area = 0.0;
        double volume = 0.0;
        for (int i = 0; i < triangles.Length; i += 3)
        {
            ReadOnlySpan<float> a = positions.Slice(3 * triangles[i], 3);
            ReadOnlySpan<float> b = positions.Slice(3 * triangles[i + 1], 3);
            ReadOnlySpan<float> c = positions.Slice(3 * triangles[i + 2], 3);
            double ux = (double)b[0] - a[0], uy = (double)b[1] - a[1], uz = (double)b[2] - a[2];
            double vx = (double)c[0] - a[0], vy = (double)c[1] - a[1], vz = (double)c[2] - a[2];
            double nx = uy * vz - uz * vy, ny = uz * vx - ux * vz, nz = ux * vy - uy * vx;
            area += 0.5 * Math.Sqrt(nx * nx + ny * ny + nz * nz);
            volume += (nx * a[0] + ny * a[1] + nz * a[2]) / 6.0;
        }

        return (area, volume);
    }
}
