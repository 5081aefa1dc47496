using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Inspection;

/// <summary>
/// A surface as points with areas: all triangles between the same eight cell centres are one patch, at their middle weighted by area. Half as many as the
/// triangles, and closer together than anything the cells can tell.
/// </summary>
internal sealed class SurfacePatches
{
    private readonly float[] middles;
    private readonly double[] areas;

    private SurfacePatches(int most) => (middles, areas) = (new float[3 * most], new double[most]);

    /// <summary>Number of patches.</summary>
    public int Count { get; private set; }

    /// <summary>Cuts a mesh into patches.</summary>
    /// <param name="mesh">A mesh of <see cref="IsoSurface"/>, whose triangles come cube by cube.</param>
    /// <param name="size">Edges of a cell.</param>
    /// <returns>The patches, in the order of the triangles.</returns>
    public static SurfacePatches Of(SurfaceMesh mesh, CellSize size)
    {
        SurfacePatches patches = new(mesh.Count);
        (int, int, int) before = default;
        double sumX = 0.0, sumY = 0.0, sumZ = 0.0, area = 0.0;
        for (int t = 0; t <= mesh.Count; t++)
        {
            (float x, float y, float z) = t < mesh.Count ? mesh.Centre(t) : default;
            (int, int, int) cube = t < mesh.Count ? (Cube(x, size.Width), Cube(y, size.Width), Cube(z, size.Height)) : default;
            if (t > 0 && area > 0.0 && (t == mesh.Count || cube != before))
            {
                patches.Add(sumX / area, sumY / area, sumZ / area, area);
                (sumX, sumY, sumZ, area) = (0.0, 0.0, 0.0, 0.0);
            }

            double own = t < mesh.Count ? mesh.TriangleArea(t) : 0.0;
            (sumX, sumY, sumZ, area, before) = (sumX + own * x, sumY + own * y, sumZ + own * z, area + own, cube);
        }

        return patches;
    }

    /// <summary>Middle of a patch.</summary>
    /// <param name="patch">Patch, from 0.</param>
    /// <returns>In the frame of the mesh.</returns>
    public (float X, float Y, float Z) Middle(int patch) => (middles[3 * patch], middles[3 * patch + 1], middles[3 * patch + 2]);

    /// <summary>Area of a patch.</summary>
    /// <param name="patch">Patch, from 0.</param>
    /// <returns>Unit of the mesh, squared.</returns>
    public double Area(int patch) => areas[patch];

    private void Add(double x, double y, double z, double area)
    {
        (middles[3 * Count], middles[3 * Count + 1], middles[3 * Count + 2]) = ((float)x, (float)y, (float)z);
        areas[Count++] = area;
    }

    private static int Cube(float along, double edge) => (int)Math.Floor(along / edge - 0.5);
}
