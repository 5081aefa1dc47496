using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Numerics;

/// <summary>A closed surface whose edges are drawn together to points, pass by pass.</summary>
internal sealed class ShrinkingSurface
{
    // A triangle may turn by at most the angle with this cosine at a time.
    private const double LeastCosine = 0.2;

    private readonly Point3[] corners;
    private readonly PlaneQuadric[] planes;
    private readonly int[] triangles;
    private readonly bool[] isDrawn;
    private readonly int[] marks;
    private readonly int[] starts;
    private readonly int[] around;
    private int mark;

    /// <summary>Takes up a mesh.</summary>
    /// <param name="mesh">The mesh; it stays as it is.</param>
    public ShrinkingSurface(SurfaceMesh mesh)
    {
        float[] positions = mesh.Positions;
        corners = new Point3[positions.Length / 3];
        for (int i = 0; i < corners.Length; i++)
        {
            corners[i] = new Point3(positions[3 * i], positions[3 * i + 1], positions[3 * i + 2]);
        }

        triangles = [.. mesh.Triangles];
        TriangleCount = triangles.Length / 3;
        planes = new PlaneQuadric[corners.Length];
        for (int i = 0; i < triangles.Length; i += 3)
        {
            PlaneQuadric plane = PlaneQuadric.Of(corners[triangles[i]], corners[triangles[i + 1]], corners[triangles[i + 2]]);
            planes[triangles[i]].Add(plane);
            planes[triangles[i + 1]].Add(plane);
            planes[triangles[i + 2]].Add(plane);
        }

        isDrawn = new bool[corners.Length];
        marks = new int[corners.Length];
        starts = new int[corners.Length + 1];
        around = new int[triangles.Length];
    }

    /// <summary>Triangles left.</summary>
    public int TriangleCount { get; private set; }

    /// <summary>Three corner numbers a triangle.</summary>
    public ReadOnlySpan<int> Triangles => triangles.AsSpan(0, 3 * TriangleCount);

    /// <summary>The point to which two corners are best drawn together.</summary>
    /// <param name="a">One corner.</param>
    /// <param name="b">The other.</param>
    /// <param name="cost">What it costs, 0 or more.</param>
    /// <returns>The point.</returns>
    public Point3 Best(int a, int b, out double cost)
    {
        PlaneQuadric both = planes[a];
        both.Add(planes[b]);
        return PlaneQuadric.Best(both, corners[a], corners[b], out cost);
    }

    /// <summary>Draws edges together, each corner once at most.</summary>
    /// <param name="sides">Sides that stand for the edges, in the order in which to try them.</param>
    /// <param name="mostTriangles">Stops when no more triangles are left.</param>
    /// <param name="mayTurnOver">Whether a triangle may be turned over.</param>
    /// <returns>Edges drawn together.</returns>
    public int DrawTogether(ReadOnlySpan<int> sides, int mostTriangles, bool mayTurnOver)
    {
        FindTrianglesAround();
        Array.Clear(isDrawn);
        int drawn = 0;
        foreach (int side in sides)
        {
            if (TriangleCount - 2 * drawn <= mostTriangles)
            {
                break;
            }

            int kept = triangles[side], gone = triangles[side % 3 == 2 ? side - 2 : side + 1];
            if (kept < 0 || gone < 0 || isDrawn[kept] || isDrawn[gone] || !StaysClosed(kept, gone))
            {
                continue;
            }

            Point3 point = Best(kept, gone, out _);
            if (mayTurnOver || (Keeps(kept, gone, point) && Keeps(gone, kept, point)))
            {
                Draw(kept, gone, point);
                drawn++;
            }
        }

        DropGoneTriangles();
        return drawn;
    }

    /// <summary>The surface as it is now.</summary>
    /// <returns>The mesh; its corners are those still in use, in their order.</returns>
    public SurfaceMesh ToMesh()
    {
        int[] numbers = new int[corners.Length];
        foreach (int corner in Triangles)
        {
            numbers[corner] = 1;
        }

        List<float> positions = [];
        for (int corner = 0; corner < numbers.Length; corner++)
        {
            if (numbers[corner] > 0)
            {
                numbers[corner] = positions.Count / 3;
                positions.AddRange([(float)corners[corner].X, (float)corners[corner].Y, (float)corners[corner].Z]);
            }
        }

        int[] left = new int[3 * TriangleCount];
        for (int i = 0; i < left.Length; i++)
        {
            left[i] = numbers[triangles[i]];
        }

        float[] places = [.. positions];
        (double area, double volume) = IsoSurface.MeasureTriangles(places, left);
        return new SurfaceMesh { Positions = places, Triangles = left, Area = area, Volume = volume };
    }

    private void FindTrianglesAround()
    {
        Array.Clear(starts);
        foreach (int corner in Triangles)
        {
            starts[corner]++;
        }

        int sum = 0;
        for (int corner = 0; corner < starts.Length; corner++)
        {
            sum += starts[corner];
            starts[corner] = sum;
        }

        // Filled from the back, each start ends where its corner's triangles begin.
        for (int i = 3 * TriangleCount - 1; i >= 0; i--)
        {
            around[--starts[triangles[i]]] = i / 3;
        }
    }

    private ReadOnlySpan<int> Around(int corner) => around.AsSpan(starts[corner]..starts[corner + 1]);

    /// <summary>Whether the edge has two triangles, its ends no common neighbour but the two across, and each of those a corner to spare.</summary>
    private bool StaysClosed(int kept, int gone)
    {
        mark += 2;
        foreach (int t in Around(kept))
        {
            Span<int> corner = triangles.AsSpan(3 * t, 3);
            if (corner[0] >= 0)
            {
                marks[corner[0]] = marks[corner[1]] = marks[corner[2]] = mark;
            }
        }

        int common = 0, shared = 0;
        foreach (int t in Around(gone))
        {
            Span<int> corner = triangles.AsSpan(3 * t, 3);
            if (corner[0] < 0)
            {
                continue;
            }

            bool isShared = corner.Contains(kept);
            shared += isShared ? 1 : 0;
            foreach (int other in corner)
            {
                if (other != kept && other != gone && marks[other] == mark)
                {
                    marks[other] = mark + 1;
                    common++;
                }

                if (isShared && other != kept && other != gone && TrianglesLeft(other) < 4)
                {
                    return false;
                }
            }
        }

        return common == 2 && shared == 2;
    }

    private int TrianglesLeft(int corner)
    {
        int left = 0;
        foreach (int t in Around(corner))
        {
            left += triangles[3 * t] >= 0 ? 1 : 0;
        }

        return left;
    }

    /// <summary>Whether the triangles of a corner, but those of the edge, keep their side when the corner moves.</summary>
    private bool Keeps(int moved, int other, Point3 point)
    {
        foreach (int t in Around(moved))
        {
            Span<int> corner = triangles.AsSpan(3 * t, 3);
            if (corner[0] < 0 || corner.Contains(other))
            {
                continue;
            }

            Point3 a = corners[corner[0]], b = corners[corner[1]], c = corners[corner[2]];
            Point3 before = Point3.Cross(b - a, c - a);
            (a, b, c) = corner[0] == moved ? (point, b, c) : corner[1] == moved ? (a, point, c) : (a, b, point);
            Point3 after = Point3.Cross(b - a, c - a);
            double sizes = before.Norm * after.Norm;
            if (before.Norm > 0.0 && Point3.Dot(before, after) <= LeastCosine * sizes)
            {
                return false;
            }
        }

        return true;
    }

    private void Draw(int kept, int gone, Point3 point)
    {
        corners[kept] = point;
        planes[kept].Add(planes[gone]);
        isDrawn[kept] = isDrawn[gone] = true;
        foreach (int t in Around(gone))
        {
            Span<int> corner = triangles.AsSpan(3 * t, 3);
            if (corner.Contains(kept))
            {
                corner.Fill(-1);
            }
            else if (corner[0] >= 0)
            {
                corner[corner.IndexOf(gone)] = kept;
            }
        }
    }

    private void DropGoneTriangles()
    {
        int left = 0;
        for (int i = 0; i < 3 * TriangleCount; i += 3)
        {
            if (triangles[i] >= 0)
            {
                (triangles[left], triangles[left + 1], triangles[left + 2]) = (triangles[i], triangles[i + 1], triangles[i + 2]);
                left += 3;
            }
        }

        TriangleCount = left / 3;
    }
}
