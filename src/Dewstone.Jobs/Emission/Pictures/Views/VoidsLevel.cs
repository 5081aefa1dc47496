using System.Numerics;
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

    /// <summary>The field.</summary>
    /// <param name="solid">Level field of the predicted solid, positive inside; index order of the grid.</param>
    /// <param name="grid">The cells.</param>
    /// <param name="placement">Where the outer box lies.</param>
    /// <param name="parallelism">Threads; the result does not depend on them.</param>
    /// <returns>Positive in a void; index order of the grid.</returns>
    public static float[] Of(float[] solid, CellGrid grid, UnitPlacement placement, Parallelism parallelism)
    {
        float[] level = new float[grid.Count];
        float skin = (float)(SkinPitches * grid.CellsPerPitch);
        float height = (float)(grid.CellHeightMetres / grid.CellMetres);
        (Vector3 boxLow, Vector3 boxHigh) = ViewCamera.BoxOf(grid, placement);
        Vector3 low = boxLow + new Vector3(skin), high = boxHigh - new Vector3(skin);
        Parallel.For(0, grid.Nz, new ParallelOptions { MaxDegreeOfParallelism = parallelism.Threads }, z =>
        {
            float pz = (z + 0.5f) * height, insideZ = Math.Min(pz - low.Z, high.Z - pz);
            for (int y = 0; y < grid.Ny; y++)
            {
                float py = y + 0.5f, insideY = Math.Min(insideZ, Math.Min(py - low.Y, high.Y - py));
                int row = (z * grid.Ny + y) * grid.Nx;
                for (int x = 0; x < grid.Nx; x++)
                {
                    float px = x + 0.5f, inside = Math.Min(insideY, Math.Min(px - low.X, high.X - px));
                    level[row + x] = Math.Max(-1f, Math.Min(inside, -solid[row + x]));
                }
            }
        });
        return level;
    }
}
