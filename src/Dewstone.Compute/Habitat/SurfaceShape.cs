using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Habitat;

/// <summary>Area and lie of the surface that is in the water.</summary>
/// <remarks>
/// What faces down within the bedding of the foot is left out. Vector ruggedness 1 - |sum of area x normal| / area (Sappington, Longshore and Thompson, 2007, "Quantifying landscape
/// ruggedness"; from memory): 0 for a plane, 1 for a closed surface. Up and down: within 45 degrees.
/// </remarks>
/// <param name="SquareMetres">Area, m2.</param>
/// <param name="VectorRuggedness">0 to 1.</param>
/// <param name="ShareUp">Share that faces up.</param>
/// <param name="ShareDown">Share that faces down.</param>
internal sealed record SurfaceShape(double SquareMetres, double VectorRuggedness, double ShareUp, double ShareDown)
{
    private const double Steep = 0.70710678118654752;

    // A little less, so that edges cut at 45 degrees all count alike.
    private const double Foot = 0.7;

    /// <summary>Measures a mesh.</summary>
    /// <param name="mesh">The surface, closed, m.</param>
    /// <param name="footMetres">Height up to which what faces down stands on the seabed, in the mesh's frame, m.</param>
    /// <returns>The figures; 0 for an empty mesh.</returns>
    public static SurfaceShape Of(SurfaceMesh mesh, double footMetres)
    {
        double area = 0.0, up = 0.0, down = 0.0, sumX = 0.0, sumY = 0.0, sumZ = 0.0;
        for (int triangle = 0; triangle < mesh.Count; triangle++)
        {
            (double x, double y, double z, double highest) = Normal(mesh, triangle);
            double twice = Math.Sqrt(x * x + y * y + z * z);
            if (z < -Foot * twice && highest <= footMetres)
            {
                continue;
            }

            area += 0.5 * twice;
            up += z > Steep * twice ? 0.5 * twice : 0.0;
            down += z < -Steep * twice ? 0.5 * twice : 0.0;
            (sumX, sumY, sumZ) = (sumX + 0.5 * x, sumY + 0.5 * y, sumZ + 0.5 * z);
        }

        return area <= 0.0
            ? new SurfaceShape(0.0, 0.0, 0.0, 0.0)
            : new SurfaceShape(area, 1.0 - Math.Sqrt(sumX * sumX + sumY * sumY + sumZ * sumZ) / area, up / area, down / area);
    }

    // Twice the area along the outward normal, and the highest corner.
    private static (double X, double Y, double Z, double Highest) Normal(SurfaceMesh mesh, int triangle)
    {
        ReadOnlySpan<float> a = mesh.Positions.AsSpan(3 * mesh.Triangles[3 * triangle], 3), b = mesh.Positions.AsSpan(3 * mesh.Triangles[3 * triangle + 1], 3);
        ReadOnlySpan<float> c = mesh.Positions.AsSpan(3 * mesh.Triangles[3 * triangle + 2], 3);
        double ux = (double)b[0] - a[0], uy = (double)b[1] - a[1], uz = (double)b[2] - a[2];
        double vx = (double)c[0] - a[0], vy = (double)c[1] - a[1], vz = (double)c[2] - a[2];
        return (uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx, Math.Max(a[2], Math.Max(b[2], c[2])));
    }
}
