using System.Numerics;
using System.Runtime.Intrinsics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>
/// The grid in bricks of four cells a side: how many bricks away the nearest one is that holds some of the body, so that sight lines leap over
/// what is empty, and how full each brick is, for soft shade.
/// </summary>
internal sealed class Bricks
{
    /// <summary>Cells a brick side.</summary>
    public const int Side = 4;

    private Bricks(int nx, int ny, int nz)
    {
        Nx = nx;
        Ny = ny;
        Nz = nz;
        Distance = new byte[nx * ny * nz];
        Fill = new float[nx * ny * nz];
    }

    /// <summary>Bricks along x.</summary>
    public int Nx { get; }

    /// <summary>Bricks along y.</summary>
    public int Ny { get; }

    /// <summary>Bricks along z.</summary>
    public int Nz { get; }

    /// <summary>Bricks to the nearest one that holds some of the body, the larger of the three axes, at most 255; 0 in such a brick.</summary>
    public byte[] Distance { get; }

    /// <summary>Share of a brick's cells inside the body, 0 to 1.</summary>
    public float[] Fill { get; }

    /// <summary>The bricks of a body.</summary>
    /// <param name="level">Level field of the body in steps, positive inside; index order of the grid.</param>
    /// <param name="grid">The cells.</param>
    /// <param name="parallelism">Threads; the result does not depend on them.</param>
    /// <returns>The bricks; brick (0, 0, 0) begins at the centre of the grid's first cell.</returns>
    public static Bricks Of(sbyte[] level, CellGrid grid, Parallelism parallelism)
    {
        Bricks bricks = new((grid.Nx + Side - 1) / Side, (grid.Ny + Side - 1) / Side, (grid.Nz + Side - 1) / Side);
        // A bit a cell, and a word of none behind each row.
        int words = grid.Nx / 64 + 2;
        ulong[] bits = new ulong[words * grid.Ny * grid.Nz];
        ParallelOptions options = new() { MaxDegreeOfParallelism = parallelism.Threads };
        Parallel.For(0, grid.Nz, options, z =>
        {
            for (int row = z * grid.Ny; row < (z + 1) * grid.Ny; row++)
            {
                Mark(level.AsSpan(row * grid.Nx, grid.Nx), bits.AsSpan(row * words, words));
            }
        });
        Parallel.For(0, bricks.Nz, options, bz =>
        {
            for (int by = 0; by < bricks.Ny; by++)
            {
                for (int bx = 0; bx < bricks.Nx; bx++)
                {
                    bricks.Survey(bits, words, grid, bx, by, bz);
                }
            }
        });
        bricks.Spread(1);
        bricks.Spread(-1);
        return bricks;
    }

    private static void Mark(ReadOnlySpan<sbyte> level, Span<ulong> bits)
    {
        int x = 0;
        for (; x <= level.Length - 16; x += 16)
        {
            ulong inside = Vector128.GreaterThan(Vector128.Create(level.Slice(x, 16)), Vector128<sbyte>.Zero).ExtractMostSignificantBits();
            bits[x / 64] |= inside << (x % 64);
        }

        for (; x < level.Length; x++)
        {
            bits[x / 64] |= (level[x] > 0 ? 1UL : 0UL) << (x % 64);
        }
    }

    // A brick reaches from its first cell centre to the next brick's, so cells at its far faces count for it too.
    private void Survey(ulong[] bits, int words, CellGrid grid, int bx, int by, int bz)
    {
        int endY = Math.Min((by + 1) * Side, grid.Ny - 1), endZ = Math.Min((bz + 1) * Side, grid.Nz - 1);
        int word = bx * Side / 64, shift = bx * Side % 64;
        ulong any = 0;
        int inside = 0;
        for (int z = bz * Side; z <= endZ; z++)
        {
            for (int y = by * Side; y <= endY; y++)
            {
                int row = (z * grid.Ny + y) * words + word;
                ulong own = bits[row] >> shift & ((1UL << Side) - 1), next = shift + Side < 64 ? bits[row] >> (shift + Side) : bits[row + 1];
                any |= own | (next & 1);
                inside += z < (bz + 1) * Side && y < (by + 1) * Side ? BitOperations.PopCount(own) : 0;
            }
        }

        int brick = (bz * Ny + by) * Nx + bx;
        Distance[brick] = any != 0 ? (byte)0 : (byte)255;
        Fill[brick] = inside / (float)(Side * Side * Side);
    }

    // Two sweeps over the thirteen neighbours before and behind give the exact distance where a step to any of the 26 neighbours counts 1.
    private void Spread(int way)
    {
        int first = way > 0 ? 0 : Distance.Length - 1;
        for (int n = 0; n < Distance.Length; n++)
        {
            int brick = first + way * n;
            int x = brick % Nx, y = brick / Nx % Ny, z = brick / (Nx * Ny);
            int least = Distance[brick];
            for (int neighbour = 0; neighbour < 13 && least > 1; neighbour++)
            {
                int dx = neighbour % 3 - 1, dy = neighbour / 3 % 3 - 1, dz = neighbour / 9 - 1;
                int ax = x + way * dx, ay = y + way * dy, az = z + way * dz;
                if ((uint)ax < (uint)Nx && (uint)ay < (uint)Ny && (uint)az < (uint)Nz)
                {
                    least = Math.Min(least, Distance[(az * Ny + ay) * Nx + ax] + 1);
                }
            }

            Distance[brick] = (byte)Math.Min(least, 255);
        }
    }
}
