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
    /// <returns>From -1 to 1, positive inside; index order of the grid.</returns>
    public static float[] Of(HardenedSurface surface, Parallelism parallelism)
    {
        CellGrid grid = surface.Grid;
        int plane = grid.Nx * grid.Ny;
        float[] flat = new float[grid.Count], level = new float[grid.Count];
        ParallelOptions options = new() { MaxDegreeOfParallelism = parallelism.Threads };
        Parallel.For(0, grid.Nz, options, z =>
        {
            float[] cut = new float[plane], along = new float[plane];
            ReadOnlySpan<float> from = surface.Level.AsSpan(z * plane, plane);
            for (int i = 0; i < plane; i++)
            {
                cut[i] = Math.Clamp(from[i], -1f, 1f);
            }

            for (int y = 0; y < grid.Ny; y++)
            {
                AlongRow(cut.AsSpan(y * grid.Nx, grid.Nx), along.AsSpan(y * grid.Nx, grid.Nx));
            }

            for (int y = 0; y < grid.Ny; y++)
            {
                int before = Math.Max(y - 1, 0) * grid.Nx, after = Math.Min(y + 1, grid.Ny - 1) * grid.Nx;
                Across(along.AsSpan(before, grid.Nx), along.AsSpan(y * grid.Nx, grid.Nx), along.AsSpan(after, grid.Nx), flat.AsSpan(z * plane + y * grid.Nx, grid.Nx));
            }
        });
        Parallel.For(0, grid.Nz, options, z =>
        {
            int below = Math.Max(z - 1, 0) * plane, above = Math.Min(z + 1, grid.Nz - 1) * plane;
            Across(flat.AsSpan(below, plane), flat.AsSpan(z * plane, plane), flat.AsSpan(above, plane), level.AsSpan(z * plane, plane));
        });
        return level;
    }

    private static void AlongRow(ReadOnlySpan<float> from, Span<float> to)
    {
        to[0] = from[0];
        to[^1] = from[^1];
        for (int x = 1; x < from.Length - 1; x++)
        {
            to[x] = 0.25f * (from[x - 1] + from[x + 1]) + 0.5f * from[x];
        }
    }

    private static void Across(ReadOnlySpan<float> before, ReadOnlySpan<float> here, ReadOnlySpan<float> after, Span<float> to)
    {
        for (int i = 0; i < to.Length; i++)
        {
            to[i] = 0.25f * (before[i] + after[i]) + 0.5f * here[i];
        }
    }
}
