using System.Numerics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Numerics;

/// <summary>
/// How many surface corners and triangles each part of a grid has, counted before any is made: every corner's number follows from the bits
/// before it, so that threads share corners without a table and in one order.
/// </summary>
/// <remarks>
/// Corners are numbered plane by plane, row by row, word by word; in a word first those on edges along x, then along y, then along z.
/// Triangles of the cubes between a plane and the next are counted with the lower one.
/// </remarks>
internal sealed class SurfaceCount
{
    private SurfaceCount(BitRows bits)
    {
        FirstVertexOfWord = new int[bits.Words.Length];
        FirstTriangleOfPlane = new int[bits.Planes];
    }

    /// <summary>Number of the first corner of each word of the bits.</summary>
    public int[] FirstVertexOfWord { get; }

    /// <summary>First triangle of the cubes above each plane, and the end.</summary>
    public int[] FirstTriangleOfPlane { get; }

    /// <summary>Corners in all.</summary>
    public int Vertices { get; private set; }

    /// <summary>Triangles in all.</summary>
    public int Triangles => FirstTriangleOfPlane[^1];

    /// <summary>Counts.</summary>
    /// <param name="bits">Set samples.</param>
    /// <param name="parallelism">Threads.</param>
    /// <returns>The counts.</returns>
    public static SurfaceCount Of(BitRows bits, Parallelism parallelism)
    {
        SurfaceCount count = new(bits);
        int[] vertices = new int[bits.Planes];
        Chunks.Run(bits.Planes - 1, 4, parallelism, (first, end) =>
        {
            for (int plane = first; plane < end; plane++)
            {
                vertices[plane] = count.CountVertices(bits, plane);
                count.FirstTriangleOfPlane[plane + 1] = CountTriangles(bits, plane);
            }
        });
        int wordsOfPlane = bits.RowsOfPlane * bits.Stride;
        for (int plane = 0; plane < bits.Planes; plane++)
        {
            foreach (ref int word in count.FirstVertexOfWord.AsSpan(plane * wordsOfPlane, wordsOfPlane))
            {
                word += count.Vertices;
            }

            count.Vertices += vertices[plane];
        }

        for (int plane = 1; plane < bits.Planes; plane++)
        {
            count.FirstTriangleOfPlane[plane] += count.FirstTriangleOfPlane[plane - 1];
        }

        return count;
    }

    private int CountVertices(BitRows bits, int plane)
    {
        int vertices = 0;
        for (int row = 0; row + 1 < bits.RowsOfPlane; row++)
        {
            SurfaceCrossings crossings = new(bits, row, plane);
            int start = bits.Row(row, plane);
            for (int word = 0; word < bits.Stride; word++)
            {
                FirstVertexOfWord[start + word] = vertices;
                if (word + 1 < bits.Stride)
                {
                    vertices += BitOperations.PopCount(crossings.AlongX(word)) + BitOperations.PopCount(crossings.AlongY(word))
                        + BitOperations.PopCount(crossings.AlongZ(word));
                }
            }
        }

        return vertices;
    }

    private static int CountTriangles(BitRows bits, int plane)
    {
        int entries = 0;
        for (int row = 0; row + 1 < bits.RowsOfPlane; row++)
        {
            CubeRow cubes = new(bits, row, plane);
            for (int word = 0; word + 1 < bits.Stride; word++)
            {
                ulong mixed = cubes.Load(word);
                for (; mixed != 0; mixed &= mixed - 1)
                {
                    int corners = cubes.Corners(BitOperations.TrailingZeroCount(mixed));
                    entries += CubeCases.Starts[corners + 1] - CubeCases.Starts[corners];
                }
            }
        }

        return entries / 3;
    }
}
