using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>
/// A surface light enough for a page. Thinning out the surface of all cells takes longer than everything else on the page; so cells are first
/// taken together until its triangles are few enough to begin with.
/// </summary>
internal static class ThinSurface
{
    /// <summary>Most triangles of a surface in the page.</summary>
    public const int MostTriangles = 60_000;

    private const int MostCells = 1_000_000;

    /// <summary>Finds a surface of at most <see cref="MostTriangles"/> triangles.</summary>
    /// <param name="values">Field of the cells.</param>
    /// <param name="grid">The cells.</param>
    /// <param name="level">Its level on the surface; above it inside, and 1 below it far outside.</param>
    /// <param name="mostToThin">Triangles to begin with, at most: the more, the truer and the slower.</param>
    /// <param name="parallelism">Threads; the result does not depend on them.</param>
    /// <returns>The mesh, metres from the grid's lower corner.</returns>
    public static SurfaceMesh Of(float[] values, CellGrid grid, float level, int mostToThin, Parallelism parallelism)
    {
        for (int together = CoarseField.TogetherForAtMost(grid, MostCells); ; together++)
        {
            CoarseField field = CoarseField.Of(values, grid, together, level + 1f, parallelism);
            SurfaceMesh mesh = IsoSurface.At(field.Values, field.Shape, field.Size, level, parallelism);
            if (mesh.Triangles.Length / 3 <= mostToThin)
            {
                return SurfaceDecimator.ToAtMost(mesh, MostTriangles, parallelism);
            }
        }
    }
}
