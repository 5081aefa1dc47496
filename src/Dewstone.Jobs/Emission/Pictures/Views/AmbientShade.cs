using System.Numerics;
using System.Runtime.CompilerServices;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>
/// How much open sky a place sees, guessed from how full its neighbourhood is: the brick fillings, blurred twice more coarsely, are read at three
/// distances out from the surface. Made for looks, not for light metering.
/// </summary>
internal sealed class AmbientShade
{
    private readonly int nx;
    private readonly int ny;
    private readonly int nz;
    private readonly float[] near;
    private readonly float[] middle;
    private readonly float[] far;

    /// <summary>Shade from bricks.</summary>
    /// <param name="bricks">The bricks of a body.</param>
    public AmbientShade(Bricks bricks)
    {
        nx = bricks.Nx;
        ny = bricks.Ny;
        nz = bricks.Nz;
        near = Blurred(bricks.Fill, 1);
        middle = Blurred(Blurred(near, 2), 1);
        far = Blurred(Blurred(middle, 3), 2);
    }

    /// <summary>Openness of a place.</summary>
    /// <param name="cell">The place, grid cells from the first cell centre.</param>
    /// <param name="normal">Outward, in the same measure.</param>
    /// <returns>1 in the open, towards 0 in a hole.</returns>
    // Compiled in full at once: a job is drawn once, and would be over before the runtime got round to it.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public float Open(Vector3 cell, Vector3 normal)
    {
        Vector3 brick = cell / Bricks.Side - new Vector3(0.5f);
        float close = Read(near, brick + 1.1f * normal);
        float mid = Read(middle, brick + 3.2f * normal);
        float wide = Read(far, brick + 7f * normal);
        return Math.Max(0f, 1f - 0.45f * close) * Math.Max(0f, 1f - 0.85f * mid) * Math.Max(0f, 1f - 0.8f * wide);
    }

    private float Read(float[] field, Vector3 p)
    {
        int x = (int)MathF.Floor(p.X), y = (int)MathF.Floor(p.Y), z = (int)MathF.Floor(p.Z);
        if (x < -1 || y < -1 || z < -1 || x >= nx || y >= ny || z >= nz)
        {
            return 0f;
        }

        float tx = p.X - x, ty = p.Y - y, tz = p.Z - z;
        float low = Row(field, x, y, z, tx, ty), high = Row(field, x, y, z + 1, tx, ty);
        return low + tz * (high - low);
    }

    private float Row(float[] field, int x, int y, int z, float tx, float ty)
    {
        float a = Cell(field, x, y, z), b = Cell(field, x + 1, y, z), c = Cell(field, x, y + 1, z), d = Cell(field, x + 1, y + 1, z);
        float front = a + tx * (b - a), back = c + tx * (d - c);
        return front + ty * (back - front);
    }

    private float Cell(float[] field, int x, int y, int z) =>
        (uint)x < (uint)nx && (uint)y < (uint)ny && (uint)z < (uint)nz ? field[(z * ny + y) * nx + x] : 0f;

    private float[] Blurred(float[] field, int reach) => Along(Along(Along(field, 1, nx, reach), nx, ny, reach), nx * ny, nz, reach);

    // A running mean along one axis; beyond the grid all is empty.
    private static float[] Along(float[] field, int stride, int count, int reach)
    {
        float[] blurred = new float[field.Length];
        float share = 1f / (2 * reach + 1);
        for (int start = 0; start < field.Length; start++)
        {
            if (start / stride % count != 0)
            {
                continue;
            }

            float sum = 0f;
            for (int i = 0; i < Math.Min(reach, count); i++)
            {
                sum += field[start + i * stride];
            }

            for (int i = 0; i < count; i++)
            {
                sum += i + reach < count ? field[start + (i + reach) * stride] : 0f;
                blurred[start + i * stride] = sum * share;
                sum -= i - reach >= 0 ? field[start + (i - reach) * stride] : 0f;
            }
        }

        return blurred;
    }
}
