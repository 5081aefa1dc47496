using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Inspection;

/// <summary>Exact distance from a point to the nearest triangle of a mesh, by bins of triangle centres with the box around each bin's triangles.</summary>
/// <remarks>
/// All bins that can hold a triangle nearer than the best found are looked into: those within that distance and the farthest that a triangle hangs over
/// its bin. Bins of the size of the cells stand between cell centres, as the triangles of <see cref="IsoSurface"/> do, so that none hangs over. Nearest point of a triangle by Voronoi regions of its corners and edges (Ericson, "Real-Time Collision Detection", 2005, section 5.1.5; from
/// memory).
/// </remarks>
internal sealed class NearestTriangle
{
    private const int BoxNumbers = 6;
    private readonly float[] corners;
    private readonly int[] triangles;
    private readonly int[] starts;
    private readonly int[] order;
    private readonly float[] boxes;
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
    /// <param name="binMetres">Edge of a bin, metres; about an edge of a triangle or two.</param>
    public NearestTriangle(SurfaceMesh mesh, double binMetres)
    {
        corners = mesh.Positions;
        triangles = mesh.Triangles;
        bin = (float)binMetres;
        Count = mesh.Count;
        float highX = float.NegativeInfinity, highY = highX, highZ = highX;
        (lowX, lowY, lowZ) = (float.PositiveInfinity, float.PositiveInfinity, float.PositiveInfinity);
        for (int t = 0; t < Count; t++)
        {
            (float x, float y, float z) = mesh.Centre(t);
            (lowX, lowY, lowZ) = (Math.Min(lowX, x), Math.Min(lowY, y), Math.Min(lowZ, z));
            (highX, highY, highZ) = (Math.Max(highX, x), Math.Max(highY, y), Math.Max(highZ, z));
        }

        (lowX, lowY, lowZ) = (Between(lowX), Between(lowY), Between(lowZ));
        (nx, ny, nz) = Count == 0 ? (0, 0, 0) : (Bin(highX - lowX) + 1, Bin(highY - lowY) + 1, Bin(highZ - lowZ) + 1);
        starts = new int[nx * ny * nz + 1];
        order = new int[Count];
        boxes = new float[BoxNumbers * Count];
        var bins = new int[Count];
        for (int t = 0; t < Count; t++)
        {
            (float x, float y, float z) = mesh.Centre(t);
            (int i, int j, int k) = (Bin(x - lowX), Bin(y - lowY), Bin(z - lowZ));
            bins[t] = (k * ny + j) * nx + i;
            starts[bins[t] + 1]++;
            for (int corner = 0; corner < 3; corner++)
            {
                ReadOnlySpan<float> at = Corner(t, corner);
                reach = Math.Max(reach, Math.Max(Over(at[0] - lowX, i), Math.Max(Over(at[1] - lowY, j), Over(at[2] - lowZ, k))));
            }
        }

        for (int b = 0; b + 1 < starts.Length; b++)
        {
            starts[b + 1] += starts[b];
        }

        int[] next = starts.AsSpan(0, starts.Length - 1).ToArray();
        for (int t = 0; t < Count; t++)
        {
            order[next[bins[t]]++] = t;
        }

        for (int t = 0; t < Count; t++)
        {
            Widen(starts[bins[t]], t);
        }
    }

    /// <summary>Triangles of the mesh.</summary>
    public int Count { get; }

    /// <summary>A triangle whose centre lies in the bin of a point.</summary>
    /// <param name="x">x, metres.</param>
    /// <param name="y">y, metres.</param>
    /// <param name="z">z, metres.</param>
    /// <param name="otherwise">What to answer when there is none.</param>
    /// <returns>Its index.</returns>
    public int Near(double x, double y, double z, int otherwise)
    {
        (double i, double j, double k) = (Math.Floor((x - lowX) / bin), Math.Floor((y - lowY) / bin), Math.Floor((z - lowZ) / bin));
        if (!(i >= 0.0 && i < nx && j >= 0.0 && j < ny && k >= 0.0 && k < nz))
        {
            return otherwise;
        }

        int at = ((int)k * ny + (int)j) * nx + (int)i;
        return starts[at + 1] > starts[at] ? order[starts[at]] : otherwise;
    }

    /// <summary>Distance to the mesh.</summary>
    /// <param name="x">x, metres.</param>
    /// <param name="y">y, metres.</param>
    /// <param name="z">z, metres.</param>
    /// <param name="nearest">A triangle that may be near, such as that found for a point close by: the nearer, the fewer bins are looked into. Takes the one found.</param>
    /// <param name="atMost">A length, metres, that the distance is known not to reach.</param>
    /// <returns>Metres; positive infinity for a mesh without triangles.</returns>
    public double Distance(double x, double y, double z, ref int nearest, double atMost = double.PositiveInfinity)
    {
        if (Count == 0)
        {
            return double.PositiveInfinity;
        }

        double best = Math.Min(atMost * atMost, ToTriangle(nearest, x, y, z));
        double far = Math.Sqrt(best) + reach;
        int lastZ = Last(z - lowZ + far, nz), lastY = Last(y - lowY + far, ny);
        for (int k = First(z - lowZ - far); k <= lastZ; k++)
        {
            double awayZ = Beyond(z - lowZ, k);
            for (int j = First(y - lowY - far); j <= lastY; j++)
            {
                double awayY = Beyond(y - lowY, j), left = best - awayZ * awayZ - awayY * awayY;
                if (left < 0.0)
                {
                    continue;
                }

                double across = Math.Sqrt(left) + reach;
                int row = (k * ny + j) * nx, end = row + Last(x - lowX + across, nx), begin = row + First(x - lowX - across);
                if (begin > end || starts[begin] == starts[end + 1])
                {
                    continue;
                }

                for (int b = begin; b <= end; b++)
                {
                    if (starts[b + 1] > starts[b] && ToBox(starts[b], x, y, z) < best)
                    {
                        SearchBin(b, x, y, z, ref best, ref nearest);
                    }
                }
            }
        }

        return Math.Sqrt(best);
    }

    private void SearchBin(int index, double x, double y, double z, ref double best, ref int nearest)
    {
        for (int at = starts[index]; at < starts[index + 1]; at++)
        {
            double squared = ToTriangle(order[at], x, y, z);
            (best, nearest) = squared < best ? (squared, order[at]) : (best, nearest);
        }
    }

    private double ToTriangle(int triangle, double x, double y, double z) =>
        TriangleDistance.Squared(x, y, z, Corner(triangle, 0), Corner(triangle, 1), Corner(triangle, 2));

    // The box around a bin's triangles stands at the place of the first of them.
    private void Widen(int place, int triangle)
    {
        Span<float> box = boxes.AsSpan(BoxNumbers * place, BoxNumbers);
        bool isFirst = order[place] == triangle;
        for (int corner = 0; corner < 3; corner++)
        {
            ReadOnlySpan<float> at = Corner(triangle, corner);
            for (int axis = 0; axis < 3; axis++)
            {
                bool fresh = isFirst && corner == 0;
                box[axis] = fresh ? at[axis] : Math.Min(box[axis], at[axis]);
                box[axis + 3] = fresh ? at[axis] : Math.Max(box[axis + 3], at[axis]);
            }
        }
    }

    // Squared distance of a point to the box of a bin.
    private double ToBox(int place, double x, double y, double z)
    {
        ReadOnlySpan<float> box = boxes.AsSpan(BoxNumbers * place, BoxNumbers);
        double dx = Math.Max(0.0, Math.Max(box[0] - x, x - box[3])), dy = Math.Max(0.0, Math.Max(box[1] - y, y - box[4]));
        double dz = Math.Max(0.0, Math.Max(box[2] - z, z - box[5]));
        return dx * dx + dy * dy + dz * dz;
    }

    // The nearest place below that lies half a bin off a whole number of bins.
    private float Between(float low) => float.IsFinite(low) ? (MathF.Floor(low / bin - 0.5f) + 0.5f) * bin : 0f;

    private double Over(double along, int index) => Math.Max(index * (double)bin - along, along - (index + 1) * (double)bin);

    // How far a bin, grown by what its triangles hang over, lies beyond a point along one axis; 0 within.
    private double Beyond(double along, int index)
    {
        double low = index * (double)bin;
        return Math.Max(0.0, Math.Max(low - along, along - low - bin) - reach);
    }

    private int First(double along) => Math.Max(0, (int)Math.Min(int.MaxValue, Math.Floor(along / bin)));

    private int Last(double along, int count) => (int)Math.Min(count - 1, Math.Floor(along / bin));

    private ReadOnlySpan<float> Corner(int triangle, int corner) => corners.AsSpan(3 * triangles[3 * triangle + corner], 3);

    private int Bin(double along) => (int)Math.Floor(along / bin);
}
