using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Inspection;

/// <summary>Exact distance from a point to the nearest triangle of a mesh, by bins of triangle centres searched shell by shell.</summary>
/// <remarks>
/// A triangle whose centre lies in no searched bin is at least (shells searched x bin edge - the longest reach of a triangle from its centre) away; the search
/// stops when the best found is nearer than that. Closest point of a triangle by Voronoi regions of its corners and edges (Ericson, "Real-Time
/// Collision Detection", 2005, section 5.1.5; from memory).
/// </remarks>
internal sealed class NearestTriangle
{
    private readonly float[] corners;
    private readonly int[] triangles;
    private readonly float[] centres;
    private readonly int[] starts;
    private readonly int[] order;
    private readonly float lowX;
    private readonly float lowY;
    private readonly float lowZ;
    private readonly int nx;
    private readonly int ny;
    private readonly int nz;
    private readonly float bin;
    private readonly double reach;

    /// <summary>Bins a mesh.</summary>
    /// <param name="mesh">Mesh, metres.</param>
    /// <param name="binMetres">Edge of a bin, metres; about two edges of a triangle.</param>
    public NearestTriangle(SurfaceMesh mesh, double binMetres)
    {
        corners = mesh.Positions;
        triangles = mesh.Triangles;
        bin = (float)binMetres;
        Count = triangles.Length / 3;
        centres = new float[triangles.Length];
        float highX = float.NegativeInfinity, highY = highX, highZ = highX;
        (lowX, lowY, lowZ) = (float.PositiveInfinity, float.PositiveInfinity, float.PositiveInfinity);
        for (int t = 0; t < Count; t++)
        {
            (float x, float y, float z) = Centre(t);
            (centres[3 * t], centres[3 * t + 1], centres[3 * t + 2]) = (x, y, z);
            (lowX, lowY, lowZ) = (Math.Min(lowX, x), Math.Min(lowY, y), Math.Min(lowZ, z));
            (highX, highY, highZ) = (Math.Max(highX, x), Math.Max(highY, y), Math.Max(highZ, z));
            for (int corner = 0; corner < 3; corner++)
            {
                int at = 3 * triangles[3 * t + corner];
                reach = Math.Max(reach, Length(corners[at] - x, corners[at + 1] - y, corners[at + 2] - z));
            }
        }

        (nx, ny, nz) = Count == 0 ? (0, 0, 0) : (Bin(highX - lowX) + 1, Bin(highY - lowY) + 1, Bin(highZ - lowZ) + 1);
        starts = new int[nx * ny * nz + 1];
        order = new int[Count];
        var bins = new int[Count];
        for (int t = 0; t < Count; t++)
        {
            bins[t] = (Bin(centres[3 * t + 2] - lowZ) * ny + Bin(centres[3 * t + 1] - lowY)) * nx + Bin(centres[3 * t] - lowX);
            starts[bins[t] + 1]++;
        }

        for (int b = 0; b + 1 < starts.Length; b++)
        {
            starts[b + 1] += starts[b];
        }

        int[] next = [.. starts];
        for (int t = 0; t < Count; t++)
        {
            order[next[bins[t]]++] = t;
        }
    }

    /// <summary>Triangles of the mesh.</summary>
    public int Count { get; }

    /// <summary>Centre of a triangle.</summary>
    /// <param name="triangle">Triangle, from 0.</param>
    /// <returns>Mean of its corners, metres.</returns>
    public (float X, float Y, float Z) Centre(int triangle)
    {
        int a = 3 * triangles[3 * triangle], b = 3 * triangles[3 * triangle + 1], c = 3 * triangles[3 * triangle + 2];
        return ((corners[a] + corners[b] + corners[c]) / 3f, (corners[a + 1] + corners[b + 1] + corners[c + 1]) / 3f,
            (corners[a + 2] + corners[b + 2] + corners[c + 2]) / 3f);
    }

    /// <summary>Area of a triangle.</summary>
    /// <param name="triangle">Triangle, from 0.</param>
    /// <returns>Square metres.</returns>
    public double Area(int triangle)
    {
        ReadOnlySpan<float> a = Corner(triangle, 0), b = Corner(triangle, 1), c = Corner(triangle, 2);
        double ux = (double)b[0] - a[0], uy = (double)b[1] - a[1], uz = (double)b[2] - a[2];
        double vx = (double)c[0] - a[0], vy = (double)c[1] - a[1], vz = (double)c[2] - a[2];
        return 0.5 * Length(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx);
    }

    /// <summary>Distance to the mesh.</summary>
    /// <param name="x">x, metres.</param>
    /// <param name="y">y, metres.</param>
    /// <param name="z">z, metres.</param>
    /// <param name="atMost">A length, metres, that the distance is known not to exceed: the nearer, the fewer bins are looked into.</param>
    /// <returns>Metres; positive infinity for a mesh without triangles.</returns>
    public double Distance(double x, double y, double z, double atMost = double.PositiveInfinity)
    {
        if (Count == 0)
        {
            return double.PositiveInfinity;
        }

        // From a point beyond the bins the search starts at the nearest of them; what it is beyond only adds to the distance.
        int i = Math.Clamp(Bin(x - lowX), 0, nx - 1), j = Math.Clamp(Bin(y - lowY), 0, ny - 1), k = Math.Clamp(Bin(z - lowZ), 0, nz - 1);
        double inside = Math.Min(Math.Min(Inner(x - lowX, i), Inner(y - lowY, j)), Inner(z - lowZ, k));
        double best = atMost * atMost;
        int last = Math.Max(nx, Math.Max(ny, nz));
        for (int shell = 0; shell <= last; shell++)
        {
            if (Math.Sqrt(best) <= (shell - 1) * (double)bin + inside - reach)
            {
                break;
            }

            best = SearchShell(i, j, k, shell, x, y, z, best);
        }

        return Math.Sqrt(best);
    }

    // Room between the point and the nearer side of its bin; 0 when it lies beyond it.
    private double Inner(double along, int index)
    {
        double within = along - index * (double)bin;
        return Math.Max(0.0, Math.Min(within, bin - within));
    }

    private double SearchShell(int i, int j, int k, int shell, double x, double y, double z, double best)
    {
        for (int c = Math.Max(0, k - shell); c <= Math.Min(nz - 1, k + shell); c++)
        {
            double away = Beyond(z - lowZ, c);
            if (away * away > best)
            {
                continue;
            }

            bool face = Math.Abs(c - k) == shell;
            for (int b = Math.Max(0, j - shell); b <= Math.Min(ny - 1, j + shell); b++)
            {
                bool whole = face || Math.Abs(b - j) == shell;
                int step = whole || shell == 0 ? 1 : 2 * shell;
                for (int a = i - shell; a <= i + shell; a += step)
                {
                    if (a >= 0 && a < nx && IsNear(x - lowX, a, y - lowY, b, away, best))
                    {
                        best = SearchBin((c * ny + b) * nx + a, x, y, z, best);
                    }
                }
            }
        }

        return best;
    }

    // How far a bin, grown by the reach of its triangles, lies beyond a point along one axis; 0 within.
    private double Beyond(double along, int index)
    {
        double low = index * (double)bin;
        return Math.Max(0.0, Math.Max(low - along, along - low - bin) - reach);
    }

    private bool IsNear(double alongX, int a, double alongY, int b, double awayZ, double best)
    {
        double x = Beyond(alongX, a), y = Beyond(alongY, b);
        return x * x + y * y + awayZ * awayZ <= best;
    }

    private double SearchBin(int index, double x, double y, double z, double best)
    {
        for (int at = starts[index]; at < starts[index + 1]; at++)
        {
            int t = order[at];
            double dx = centres[3 * t] - x, dy = centres[3 * t + 1] - y, dz = centres[3 * t + 2] - z;
            double least = Length(dx, dy, dz) - reach;
            if (least <= 0.0 || least * least < best)
            {
                best = Math.Min(best, TriangleDistance.Squared(x, y, z, Corner(t, 0), Corner(t, 1), Corner(t, 2)));
            }
        }

        return best;
    }

    private ReadOnlySpan<float> Corner(int triangle, int corner) => corners.AsSpan(3 * triangles[3 * triangle + corner], 3);

    private int Bin(double along) => (int)Math.Floor(along / bin);

    private static double Length(double x, double y, double z) => Math.Sqrt(x * x + y * y + z * z);
}
