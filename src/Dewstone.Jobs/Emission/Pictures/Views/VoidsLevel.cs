using System.Numerics;
using System.Runtime.Intrinsics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>
/// The voids as a level field: what did not set inside the outer box, less a skin along its faces. Without that, rounded edges, relief and the
/// scallops between needles would lie over the whole box like a peel and hide the voids that matter.
/// </summary>
internal static class VoidsLevel
{
    /// <summary>Thickness of the skin left out, in pitches.</summary>
    public const double SkinPitches = 0.5;

    private delegate void Row(int first, ReadOnlySpan<float> inside);

    /// <summary>The field.</summary>
    /// <param name="solid">Level field of the predicted solid, positive inside; index order of the grid.</param>
    /// <param name="grid">The cells.</param>
    /// <param name="placement">Where the outer box lies.</param>
    /// <param name="parallelism">Threads; the result does not depend on them.</param>
    /// <returns>From -1, positive in a void; index order of the grid.</returns>
    public static float[] Of(float[] solid, CellGrid grid, UnitPlacement placement, Parallelism parallelism)
    {
        float[] level = GC.AllocateUninitializedArray<float>(grid.Count);
        ByRows(grid, placement, parallelism, (first, inside) =>
        {
            for (int x = 0; x < inside.Length; x++)
            {
                level[first + x] = Math.Max(-1f, Math.Min(inside[x], -solid[first + x]));
            }
        });
        return level;
    }

    /// <summary>The same in steps of a <see cref="SampledField"/>.</summary>
    /// <param name="solid">Level field of the predicted solid in steps; index order of the grid.</param>
    /// <param name="grid">The cells.</param>
    /// <param name="placement">Where the outer box lies.</param>
    /// <param name="parallelism">Threads; the result does not depend on them.</param>
    /// <returns>Positive in a void; index order of the grid.</returns>
    public static sbyte[] Of(sbyte[] solid, CellGrid grid, UnitPlacement placement, Parallelism parallelism)
    {
        sbyte[] level = GC.AllocateUninitializedArray<sbyte>(grid.Count);
        ByRows(grid, placement, parallelism, (first, inside) =>
        {
            Span<sbyte> row = level.AsSpan(first, inside.Length);
            SampledField.ToSteps(inside, row);
            int x = 0;
            for (; x <= row.Length - 16; x += 16)
            {
                Vector128.Min(Vector128.Create<sbyte>(row.Slice(x, 16)), -Vector128.Create(solid.AsSpan(first + x, 16))).StoreUnsafe(ref row[x]);
            }

            for (; x < row.Length; x++)
            {
                row[x] = Math.Min(row[x], (sbyte)-solid[first + x]);
            }
        });
        return level;
    }

    // Tells for each row of cells how far inside the box less its skin they lie, cells.
    private static void ByRows(CellGrid grid, UnitPlacement placement, Parallelism parallelism, Row told)
    {
        float skin = (float)(SkinPitches * grid.CellsPerPitch), height = (float)(grid.CellHeightMetres / grid.CellMetres);
        (Vector3 boxLow, Vector3 boxHigh) = ViewCamera.BoxOf(grid, placement);
        Vector3 low = boxLow + new Vector3(skin), high = boxHigh - new Vector3(skin);
        float[] insideX = [.. Enumerable.Range(0, grid.Nx).Select(x => Math.Min(x + 0.5f - low.X, high.X - (x + 0.5f)))];
        Parallel.For(0, grid.Nz, new ParallelOptions { MaxDegreeOfParallelism = parallelism.Threads }, z =>
        {
            float[] inside = new float[grid.Nx];
            float pz = (z + 0.5f) * height, insideZ = Math.Min(pz - low.Z, high.Z - pz);
            for (int y = 0; y < grid.Ny; y++)
            {
                float py = y + 0.5f, insideY = Math.Min(insideZ, Math.Min(py - low.Y, high.Y - py));
                for (int x = 0; x < inside.Length; x++)
                {
                    inside[x] = Math.Min(insideY, insideX[x]);
                }

                told((z * grid.Ny + y) * grid.Nx, inside);
            }
        });
    }
}
