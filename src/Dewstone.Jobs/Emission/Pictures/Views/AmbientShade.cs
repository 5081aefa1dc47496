using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

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
    private readonly SampledField near;
    private readonly SampledField middle;
    private readonly SampledField far;

    /// <summary>Shade from bricks.</summary>
    /// <param name="bricks">The bricks of a body.</param>
    public AmbientShade(Bricks bricks)
    {
        nx = bricks.Nx;
        ny = bricks.Ny;
        nz = bricks.Nz;
        float[] close = Blurred(bricks.Fill, 1), mid = Blurred(Blurred(close, 2), 1), wide = Blurred(Blurred(mid, 3), 2);
        (near, middle, far) = (InTheOpen(close), InTheOpen(mid), InTheOpen(wide));
    }

    /// <summary>Openness of a place.</summary>
    /// <param name="cell">The place, grid cells from the first cell centre.</param>
    /// <param name="normal">Outward, in the same measure.</param>
    /// <returns>1 in the open, towards 0 in a hole.</returns>
    // Compiled in full at once: a job is drawn once, and would be over before the runtime got round to it.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public float Open(Vector3 cell, Vector3 normal)
    {
        Vector3 brick = cell / Bricks.Side + new Vector3(0.5f);
        float close = near.At((brick + 1.1f * normal).AsVector128());
        float mid = middle.At((brick + 3.2f * normal).AsVector128());
        float wide = far.At((brick + 7f * normal).AsVector128());
        return Math.Max(0f, 1f - 0.45f * close) * Math.Max(0f, 1f - 0.85f * mid) * Math.Max(0f, 1f - 0.8f * wide);
    }

    // With empty bricks all around.
    private SampledField InTheOpen(float[] field)
    {
        sbyte[] wider = new sbyte[(nx + 2) * (ny + 2) * (nz + 2)];
        for (int z = 0; z < nz; z++)
        {
            for (int y = 0; y < ny; y++)
            {
                SampledField.ToSteps(field.AsSpan((z * ny + y) * nx, nx), wider.AsSpan(((z + 1) * (ny + 2) + y + 1) * (nx + 2) + 1, nx));
            }
        }

        return new SampledField(wider, nx + 2, ny + 2, nz + 2);
    }

    private float[] Blurred(float[] field, int reach) => Along(Along(Along(field, 1, nx, reach), nx, ny, reach), nx * ny, nz, reach);

    // A running mean along one axis; beyond the grid all is empty.
    private static float[] Along(float[] field, int stride, int count, int reach)
    {
        float[] blurred = new float[field.Length];
        float share = 1f / (2 * reach + 1);
        for (int block = 0; block < field.Length; block += stride * count)
        {
            for (int start = block; start < block + stride; start++)
            {
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
        }

        return blurred;
    }
}
