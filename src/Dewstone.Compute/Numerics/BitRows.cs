using System.Runtime.Intrinsics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Numerics;

/// <summary>
/// A field of cells as one bit a cell, with an empty cell added at both ends of every axis: 64 neighbours along x are worked on at once.
/// Cell x stands at bit x + 1 of its row, row y at y + 1, plane z at z + 1; the last word of every row is always 0.
/// </summary>
internal sealed class BitRows
{
    /// <summary>Planes that one piece of work packs.</summary>
    private const int PlanesTogether = 8;

    private BitRows(GridShape shape)
    {
        RowsOfPlane = shape.Ny + 2;
        Planes = shape.Nz + 2;
        Stride = (shape.Nx + 1) / 64 + 2;
        Words = new ulong[Stride * RowsOfPlane * Planes];
    }

    /// <summary>Words of a row, the last always 0.</summary>
    public int Stride { get; }

    /// <summary>Rows of a plane, with the two added.</summary>
    public int RowsOfPlane { get; }

    /// <summary>Planes, with the two added.</summary>
    public int Planes { get; }

    /// <summary>All rows one after another.</summary>
    public ulong[] Words { get; }

    /// <summary>Packs a field of bytes: a bit is on where the byte is not 0.</summary>
    /// <param name="cells">0 empty, else set.</param>
    /// <param name="shape">Cells along each axis.</param>
    /// <param name="parallelism">Threads.</param>
    /// <returns>The bits.</returns>
    public static BitRows Of(byte[] cells, GridShape shape, Parallelism parallelism)
    {
        BitRows bits = new(shape);
        Chunks.Run(shape.Nz, PlanesTogether, parallelism, (first, end) =>
        {
            for (int row = first * shape.Ny; row < end * shape.Ny; row++)
            {
                Pack(cells.AsSpan(row * shape.Nx, shape.Nx), bits.Words.AsSpan(bits.Row(row % shape.Ny + 1, row / shape.Ny + 1), bits.Stride));
            }
        });
        return bits;
    }

    /// <summary>Packs a field of numbers: a bit is on where the number is at or above a level.</summary>
    /// <param name="field">The numbers.</param>
    /// <param name="level">The level.</param>
    /// <param name="shape">Cells along each axis.</param>
    /// <param name="parallelism">Threads.</param>
    /// <returns>The bits.</returns>
    public static BitRows Of(float[] field, float level, GridShape shape, Parallelism parallelism)
    {
        BitRows bits = new(shape);
        Chunks.Run(shape.Nz, PlanesTogether, parallelism, (first, end) =>
        {
            for (int row = first * shape.Ny; row < end * shape.Ny; row++)
            {
                Pack(
                    field.AsSpan(row * shape.Nx, shape.Nx),
                    level,
                    bits.Words.AsSpan(bits.Row(row % shape.Ny + 1, row / shape.Ny + 1), bits.Stride));
            }
        });
        return bits;
    }

    /// <summary>First word of a row.</summary>
    /// <param name="row">Row of the plane, from 0 for the one added before the first.</param>
    /// <param name="plane">Plane, likewise.</param>
    /// <returns>Index into <see cref="Words"/>.</returns>
    public int Row(int row, int plane) => (plane * RowsOfPlane + row) * Stride;

    /// <summary>The word whose bit i is the neighbour at i + 1 of a word's bit i.</summary>
    /// <param name="word">Index of the word, not the last of its row.</param>
    /// <returns>The shifted word.</returns>
    public ulong Next(int word) => (Words[word] >> 1) | (Words[word + 1] << 63);

    private static void Pack(ReadOnlySpan<byte> cells, Span<ulong> words)
    {
        int x = 0;
        for (; x + Vector256<byte>.Count <= cells.Length; x += Vector256<byte>.Count)
        {
            uint empty = Vector256.Equals(Vector256.Create(cells[x..]), Vector256<byte>.Zero).ExtractMostSignificantBits();
            Put(words, x + 1, ~empty);
        }

        for (; x < cells.Length; x++)
        {
            Put(words, x + 1, cells[x] != 0 ? 1u : 0u);
        }
    }

    private static void Pack(ReadOnlySpan<float> field, float level, Span<ulong> words)
    {
        Vector256<float> levels = Vector256.Create(level);
        int x = 0;
        for (; x + Vector256<float>.Count <= field.Length; x += Vector256<float>.Count)
        {
            Put(words, x + 1, Vector256.GreaterThanOrEqual(Vector256.Create(field[x..]), levels).ExtractMostSignificantBits());
        }

        for (; x < field.Length; x++)
        {
            Put(words, x + 1, field[x] >= level ? 1u : 0u);
        }
    }

    private static void Put(Span<ulong> words, int at, uint bits)
    {
        int shift = at & 63;
        words[at >> 6] |= (ulong)bits << shift;
        if (shift > 32)
        {
            words[(at >> 6) + 1] |= (ulong)bits >> (64 - shift);
        }
    }
}
