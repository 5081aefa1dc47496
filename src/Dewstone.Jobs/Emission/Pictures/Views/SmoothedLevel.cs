using System.Runtime.Intrinsics;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>
/// The level field for views: cut off alike on both sides of the surface, then averaged over three cells along each axis with weights 1, 2, 1.
/// The front falls within a cell or two, so a surface laid straight between cell centres has dents of a fraction of a cell that are the grid's,
/// not the solid's. Plates show the field as it is.
/// </summary>
internal static class SmoothedLevel
{
    /// <summary>The field.</summary>
    /// <param name="surface">The predicted solid.</param>
    /// <param name="parallelism">Threads; the result does not depend on them.</param>
    /// <returns>In steps of a <see cref="SampledField"/>, positive inside; index order of the grid.</returns>
    public static sbyte[] Of(HardenedSurface surface, Parallelism parallelism)
    {
        CellGrid grid = surface.Grid;
        int plane = grid.Nx * grid.Ny;
        float[] flat = GC.AllocateUninitializedArray<float>(grid.Count);
        sbyte[] level = GC.AllocateUninitializedArray<sbyte>(grid.Count);
        ParallelOptions options = new() { MaxDegreeOfParallelism = parallelism.Threads };
        Parallel.For(0, grid.Nz, options, z =>
        {
            float[] cut = new float[grid.Nx], along = new float[plane];
            for (int y = 0; y < grid.Ny; y++)
            {
                Cut(surface.Level.AsSpan(z * plane + y * grid.Nx, grid.Nx), cut);
                AlongRow(cut, along.AsSpan(y * grid.Nx, grid.Nx));
            }

            for (int y = 0; y < grid.Ny; y++)
            {
                int before = Math.Max(y - 1, 0) * grid.Nx, after = Math.Min(y + 1, grid.Ny - 1) * grid.Nx;
                Weigh(along.AsSpan(before, grid.Nx), along.AsSpan(y * grid.Nx, grid.Nx), along.AsSpan(after, grid.Nx), flat.AsSpan(z * plane + y * grid.Nx, grid.Nx));
            }
        });
        Parallel.For(0, grid.Nz, options, z =>
        {
            int below = Math.Max(z - 1, 0) * plane, above = Math.Min(z + 1, grid.Nz - 1) * plane;
            float[] row = new float[grid.Nx];
            for (int first = 0; first < plane; first += grid.Nx)
            {
                Weigh(flat.AsSpan(below + first, grid.Nx), flat.AsSpan(z * plane + first, grid.Nx), flat.AsSpan(above + first, grid.Nx), row);
                SampledField.ToSteps(row, level.AsSpan(z * plane + first, grid.Nx));
            }
        });
        return level;
    }

    // Four values at a time: each comes out as it would alone.
    private static void Cut(ReadOnlySpan<float> from, Span<float> to)
    {
        int i = 0;
        for (; i <= to.Length - 4; i += 4)
        {
            Vector128.MinNative(Vector128.MaxNative(Four(from, i), Vector128.Create(-1f)), Vector128<float>.One).StoreUnsafe(ref to[i]);
        }

        for (; i < to.Length; i++)
        {
            to[i] = Math.Clamp(from[i], -1f, 1f);
        }
    }

    private static void AlongRow(ReadOnlySpan<float> from, Span<float> to)
    {
        to[0] = from[0];
        to[^1] = from[^1];
        Weigh(from[..^2], from[1..^1], from[2..], to[1..^1]);
    }

    private static void Weigh(ReadOnlySpan<float> before, ReadOnlySpan<float> here, ReadOnlySpan<float> after, Span<float> to)
    {
        int i = 0;
        for (; i <= to.Length - 4; i += 4)
        {
            (0.25f * (Four(before, i) + Four(after, i)) + 0.5f * Four(here, i)).StoreUnsafe(ref to[i]);
        }

        for (; i < to.Length; i++)
        {
            to[i] = 0.25f * (before[i] + after[i]) + 0.5f * here[i];
        }
    }

    private static Vector128<float> Four(ReadOnlySpan<float> values, int first) => Vector128.Create(values.Slice(first, 4));
}
