using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Numerics;

/// <summary>The hardened surface as a level of a field: the effective saturation over the threshold's, raised to a power.</summary>
internal static class HardeningFront
{
    /// <summary>Planes that one piece of work takes.</summary>
    private const int PlanesTogether = 4;

    /// <summary>The field whose level 1 is the hardened surface; a power makes it nearly straight between two cells.</summary>
    /// <param name="moisture">What the water did.</param>
    /// <param name="surfaceExponent">Power of the effective saturation that is nearly straight across a front, 1 or more.</param>
    /// <param name="residual">Residual water content of the law, 1.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>Values; index order of the grid.</returns>
    public static float[] Of(MoistureResult moisture, int surfaceExponent, double residual, Parallelism parallelism)
    {
        CellGrid grid = moisture.Grid;
        float[] content = moisture.VolumetricWaterContent, front = new float[content.Length];
        double scale = 1.0 / (moisture.ThresholdContent - residual);
        int plane = grid.Nx * grid.Ny;
        Chunks.Run(grid.Nz, PlanesTogether, parallelism, (first, end) =>
        {
            for (int i = first * plane; i < end * plane; i++)
            {
                double ratio = (content[i] - residual) * scale;
                front[i] = ratio <= 0.0 ? 0f : (float)Elementary.WholePower(ratio, surfaceExponent);
            }
        });
        return front;
    }
}
