using System.Numerics;

namespace Dewstone.Compute.Numerics;

/// <summary>Lays the triangles of a surface over its numbered corners.</summary>
internal sealed class SurfaceTriangles(BitRows bits, SurfaceCount count)
{
    private const int Lines = 8;

    /// <summary>Lays those of the cubes between a plane and the next.</summary>
    /// <param name="plane">Plane of the bits, not the last.</param>
    /// <param name="triangles">Takes three corner numbers a triangle.</param>
    public void Lay(int plane, Span<int> triangles)
    {
        int at = 3 * count.FirstTriangleOfPlane[plane];
        Span<ulong> crossed = stackalloc ulong[Lines];
        Span<int> first = stackalloc int[Lines];
        for (int row = 0; row + 1 < bits.RowsOfPlane; row++)
        {
            CubeRow cubes = new(bits, row, plane);
            for (int word = 0; word + 1 < bits.Stride; word++)
            {
                ulong mixed = cubes.Load(word);
                if (mixed != 0)
                {
                    Prepare(row, plane, word, crossed, first);
                }

                for (; mixed != 0; mixed &= mixed - 1)
                {
                    int bit = BitOperations.TrailingZeroCount(mixed);
                    int corners = cubes.Corners(bit);
                    int end = CubeCases.Starts[corners + 1];
                    for (int entry = CubeCases.Starts[corners]; entry < end; entry++)
                    {
                        int edge = CubeCases.Triangles[entry];
                        int sample = edge < 4 ? bit : bit + (edge & 1), line = edge < 4 ? edge : 2 + (edge >> 1);
                        triangles[at++] = sample < 64
                            ? first[line] + BitOperations.PopCount(crossed[line] & ((1UL << sample) - 1))
                            : Vertex(edge, 64 * word + bit, row, plane);
                    }
                }
            }
        }
    }

    /// <summary>
    /// The lines of edges that the cubes of a word have in common: four along x, by row and plane; two each along y, by plane, and along z, by row.
    /// </summary>
    private void Prepare(int row, int plane, int word, Span<ulong> crossed, Span<int> first)
    {
        for (int beside = 0; beside < 4; beside++)
        {
            int y = row + (beside & 1), z = plane + (beside >> 1);
            SurfaceCrossings crossings = new(bits, y, z);
            int number = count.FirstVertexOfWord[bits.Row(y, z) + word];
            ulong alongX = crossings.AlongX(word);
            (crossed[beside], first[beside]) = (alongX, number);
            if (y == row)
            {
                (crossed[4 + (beside >> 1)], first[4 + (beside >> 1)]) = (crossings.AlongY(word), number + BitOperations.PopCount(alongX));
            }

            if (z == plane)
            {
                (crossed[6 + beside], first[6 + beside]) = (crossings.AlongZ(word), number + BitOperations.PopCount(alongX) + BitOperations.PopCount(crossings.AlongY(word)));
            }
        }
    }

    /// <summary>Number of the corner on one edge of a cube: the crossings counted before its word, and those before it in the word.</summary>
    private int Vertex(int edge, int x, int row, int plane)
    {
        int low = edge & 1;
        int high = (edge >> 1) & 1;
        int axis = edge >> 2;
        int sample = axis == 0 ? x : x + low;
        int y = axis == 0 ? row + low : axis == 1 ? row : row + high;
        int z = axis == 2 ? plane : plane + high;
        int word = sample >> 6;
        ulong before = (1UL << (sample & 63)) - 1;
        SurfaceCrossings crossings = new(bits, y, z);
        int number = count.FirstVertexOfWord[bits.Row(y, z) + word];
        ulong alongX = crossings.AlongX(word);
        if (axis == 0)
        {
            return number + BitOperations.PopCount(alongX & before);
        }

        number += BitOperations.PopCount(alongX);
        ulong alongY = crossings.AlongY(word);
        return axis == 1
            ? number + BitOperations.PopCount(alongY & before)
            : number + BitOperations.PopCount(alongY) + BitOperations.PopCount(crossings.AlongZ(word) & before);
    }
}
