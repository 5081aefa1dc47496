using Dewstone.Compute.Numerics;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Survey;

/// <summary>A predicted surface to lay a scan on: corners, their outward directions and a tree to find the nearest.</summary>
public sealed class SurveyedSurface
{
    private readonly float[] positions;
    private readonly float[] normals;
    private readonly PointTree tree;
    private readonly int[] triangles;

    // Triangles at each corner: their numbers from starts[corner] to before starts[corner + 1].
    private readonly int[] starts;
    private readonly int[] atCorners;

    /// <summary>Prepares a surface.</summary>
    /// <param name="corners">x y z one after another, metres; any frame.</param>
    /// <param name="faces">Three corner numbers a triangle, counter-clockwise seen from outside.</param>
    /// <exception cref="ArgumentException">No triangle.</exception>
    public SurveyedSurface(float[] corners, int[] faces)
    {
        ArgumentNullException.ThrowIfNull(corners);
        ArgumentNullException.ThrowIfNull(faces);
        if (faces.Length == 0)
        {
            throw new ArgumentException("The surface has no triangle.", nameof(faces));
        }

        positions = corners;
        triangles = faces;
        normals = NormalsOf(corners, faces);
        (starts, atCorners) = TrianglesAt(corners.Length / 3, faces);
        tree = new PointTree(corners);
        double x = 0.0, y = 0.0, z = 0.0;
        for (int i = 0; i < corners.Length; i += 3)
        {
            (x, y, z) = (x + corners[i], y + corners[i + 1], z + corners[i + 2]);
        }

        int count = corners.Length / 3;
        Centre = new Point3(x / count, y / count, z / count);
    }

    /// <summary>Mean of its corners, metres.</summary>
    public Point3 Centre { get; }

    /// <summary>Number of corners.</summary>
    public int Corners => positions.Length / 3;

    /// <summary>A corner.</summary>
    /// <param name="corner">Its number.</param>
    /// <returns>Metres.</returns>
    public Point3 Corner(int corner) => new(positions[3 * corner], positions[3 * corner + 1], positions[3 * corner + 2]);

    /// <summary>Outward direction of a corner: the mean of its triangles', weighted by their areas.</summary>
    /// <param name="corner">Its number.</param>
    /// <returns>A unit vector.</returns>
    public Point3 Normal(int corner) => new(normals[3 * corner], normals[3 * corner + 1], normals[3 * corner + 2]);

    /// <summary>The corner nearest to a point.</summary>
    /// <param name="p">The point, metres.</param>
    /// <returns>Its number and distance, metres.</returns>
    public (int Corner, double Metres) Nearest(Point3 p) => tree.Nearest(p.X, p.Y, p.Z);

    /// <summary>
    /// Signed distance to the surface: from the triangles that meet at the nearest corner on to their neighbours, as long as one of those lies nearer.
    /// </summary>
    /// <param name="p">The point, metres.</param>
    /// <returns>Metres, above 0 outside.</returns>
    public double Deviation(Point3 p)
    {
        (int corner, _) = Nearest(p);
        (int best, double least) = (-1, double.PositiveInfinity);
        Look(p, corner, ref best, ref least);
        for (int from = -1; from != best;)
        {
            from = best;
            for (int side = 0; side < 3; side++)
            {
                Look(p, triangles[3 * from + side], ref best, ref least);
            }
        }

        Point3 off = p - Corner(corner), normal = Normal(corner);
        return Math.CopySign(Math.Sqrt(least), off.X * normal.X + off.Y * normal.Y + off.Z * normal.Z);
    }

    private void Look(Point3 p, int corner, ref int best, ref double least)
    {
        for (int i = starts[corner]; i < starts[corner + 1]; i++)
        {
            int t = 3 * atCorners[i];
            double squared = TriangleDistance.Squared(p.X, p.Y, p.Z, At(triangles[t]), At(triangles[t + 1]), At(triangles[t + 2]));
            (best, least) = squared < least ? (atCorners[i], squared) : (best, least);
        }
    }

    private ReadOnlySpan<float> At(int corner) => positions.AsSpan(3 * corner, 3);

    private static (int[] Starts, int[] AtCorners) TrianglesAt(int corners, int[] faces)
    {
        int[] firsts = new int[corners + 1], filled = new int[corners], at = new int[faces.Length];
        foreach (int corner in faces)
        {
            firsts[corner + 1]++;
        }

        for (int corner = 0; corner < corners; corner++)
        {
            firsts[corner + 1] += firsts[corner];
        }

        for (int i = 0; i < faces.Length; i++)
        {
            at[firsts[faces[i]] + filled[faces[i]]++] = i / 3;
        }

        return (firsts, at);
    }

    private static float[] NormalsOf(float[] p, int[] faces)
    {
        float[] sums = new float[p.Length];
        for (int t = 0; t < faces.Length; t += 3)
        {
            int a = 3 * faces[t], b = 3 * faces[t + 1], c = 3 * faces[t + 2];
            float ux = p[b] - p[a], uy = p[b + 1] - p[a + 1], uz = p[b + 2] - p[a + 2], vx = p[c] - p[a], vy = p[c + 1] - p[a + 1], vz = p[c + 2] - p[a + 2];
            float nx = uy * vz - uz * vy, ny = uz * vx - ux * vz, nz = ux * vy - uy * vx;
            foreach (int corner in (ReadOnlySpan<int>)[a, b, c])
            {
                (sums[corner], sums[corner + 1], sums[corner + 2]) = (sums[corner] + nx, sums[corner + 1] + ny, sums[corner + 2] + nz);
            }
        }

        for (int i = 0; i < sums.Length; i += 3)
        {
            float length = MathF.Sqrt(sums[i] * sums[i] + sums[i + 1] * sums[i + 1] + sums[i + 2] * sums[i + 2]);
            if (length > 0f)
            {
                (sums[i], sums[i + 1], sums[i + 2]) = (sums[i] / length, sums[i + 1] / length, sums[i + 2] / length);
            }
            else
            {
                sums[i + 2] = 1f;
            }
        }

        return sums;
    }
}
